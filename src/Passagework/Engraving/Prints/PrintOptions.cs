using Passagework.Engraving.Pictures;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Engraving.Prints;

/// <summary>What is shown of an exercise.</summary>
public sealed record PrintOptions
{
    /// <summary>How the music is engraved; its width is set by the page.</summary>
    public ScoreOptions Music { get; init; } = new();

    /// <summary>Whether the strip of both hands stands under the music, with its key.</summary>
    public bool Strip { get; init; } = true;

    /// <summary>Felt beats a minute for the strip; null takes the recipe's tempo, else a relaxed one for the player.</summary>
    public double? TempoBpm { get; init; }

    /// <summary>Whether neck and beat picture follow the music.</summary>
    public bool Pictures { get; init; } = true;

    /// <summary>How the neck is drawn.</summary>
    public FretboardOptions Neck { get; init; } = new();

    /// <summary>The paper of pages.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Prints of a room: its numbers of boxes, names of notes and counting.</summary>
    public static PrintOptions Of(RoomStyle style) =>
        new()
        {
            Neck = new FretboardOptions { Style = style },
            Music = new ScoreOptions { Syllables = CountSyllables.Of(style.Counting) },
        };
}
