using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>The idea of an exercise; everything else is computed from it.</summary>
/// <remarks>
/// Either a layout with a cell that moves over its path, or a line written note by note. Values are checked when
/// the recipe is read or laid out, never silently changed.
/// </remarks>
public sealed record Recipe
{
    /// <summary>Short name used on the command line; null when it has none.</summary>
    public string? Id { get; init; }

    /// <summary>Title for people.</summary>
    public string? Title { get; init; }

    /// <summary>What it is for, in one phrase.</summary>
    public string? Purpose { get; init; }

    /// <summary>Root and scale; null only for a written line that names none.</summary>
    public NoteSet? Notes { get; init; }

    /// <summary>The instrument it is meant for.</summary>
    public Fretboard Instrument { get; init; } = Fretboard.Standard;

    /// <summary>How the notes lie on the neck; null for a written line.</summary>
    public Layout? Layout { get; init; }

    /// <summary>The figure that is moved; null for a written line.</summary>
    public Cell? Cell { get; init; }

    /// <summary>How the cell moves along the path.</summary>
    public Movement Movement { get; init; } = new();

    /// <summary>Note values, metre and swing.</summary>
    public RhythmPlan Rhythm { get; init; } = new();

    /// <summary>The picking hand's technique.</summary>
    public PickingPlan Picking { get; init; } = new();

    /// <summary>What the fretting hand is told.</summary>
    public FrettingPlan Fretting { get; init; } = new();

    /// <summary>The line itself, for music typed or imported note by note; null for an idea.</summary>
    public WrittenLine? Written { get; init; }
}
