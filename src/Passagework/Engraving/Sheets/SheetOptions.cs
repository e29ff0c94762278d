using Passagework.Engraving.Pictures;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Engraving.Sheets;

/// <summary>How sheets are printed.</summary>
public sealed record SheetOptions
{
    /// <summary>The paper.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>How the neck is drawn; its length is set by the sheet.</summary>
    public FretboardOptions Neck { get; init; } = new();

    /// <summary>How the music is engraved; its width is set by the sheet, and bars are not numbered.</summary>
    public ScoreOptions Music { get; init; } = new();

    /// <summary>Sheets of a room: its numbers of boxes, names of notes and counting.</summary>
    public static SheetOptions Of(RoomStyle style) =>
        new()
        {
            Neck = new FretboardOptions { Style = style },
            Music = new ScoreOptions { Syllables = CountSyllables.Of(style.Counting) },
        };
}

/// <summary>A size of paper, upright.</summary>
public enum Paper
{
    /// <summary>210 by 297 mm (ISO 216).</summary>
    A4,

    /// <summary>215.9 by 279.4 mm.</summary>
    Letter,
}
