using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>One system while it is drawn.</summary>
/// <param name="Plan">Its columns in their places.</param>
/// <param name="Piece">What is the same for all systems.</param>
/// <param name="Staff">The staff with its marks; null without one.</param>
/// <param name="Tab">The tab with its marks; null without one.</param>
internal sealed record Scene(SystemPlan Plan, ScorePiece Piece, Block? Staff, Block? Tab)
{
    /// <summary>The upper staff, over which strokes, brackets and words stand.</summary>
    public Block Top => Staff ?? Tab ?? throw new System.Diagnostics.UnreachableException();

    /// <summary>The lower staff, under which the counting stands.</summary>
    public Block Bottom => Tab ?? Staff ?? throw new System.Diagnostics.UnreachableException();

    /// <summary>A mark of the system that belongs to no note.</summary>
    public Tag Tag(string kind, string part = "", Ink ink = Ink.Main)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"system-{Plan.Index + 1}-{kind}");
        return new Tag(part.Length == 0 ? name : name + "-" + part, kind, null, ink);
    }

    /// <summary>A numbered mark of the system.</summary>
    public Tag Tag(string kind, int part, Ink ink = Ink.Main) =>
        Tag(kind, part.ToString(CultureInfo.InvariantCulture), ink);

    /// <summary>A mark of a column.</summary>
    public static Tag Tag(Column column, string kind, Ink ink = Ink.Main) =>
        new(column.Name + "-" + kind, kind, column.Note, ink);

    /// <summary>A mark of a column that has several of the kind.</summary>
    public static Tag Tag(Column column, string kind, int part, Ink ink = Ink.Main) =>
        new(
            string.Create(CultureInfo.InvariantCulture, $"{column.Name}-{kind}-{part}"),
            kind,
            column.Note,
            ink
        );
}

/// <summary>What is the same for all systems of a piece.</summary>
/// <param name="Realization">What is played.</param>
/// <param name="Written">Its bars.</param>
/// <param name="Options">How it is written.</param>
/// <param name="Sizes">Sizes.</param>
/// <param name="Ink">Reach of columns.</param>
internal sealed record ScorePiece(
    Realization Realization,
    WrittenScore Written,
    ScoreOptions Options,
    Sizes Sizes,
    ColumnInk Ink
)
{
    /// <summary>How all notes are to sound.</summary>
    public NoteSound Sound => Realization.Line.Recipe.Cell?.Sound ?? NoteSound.Normal;

    /// <summary>Index of the last note.</summary>
    public int LastNote => Realization.Notes.Length - 1;
}
