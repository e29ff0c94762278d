using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Engraving.Scores;

/// <summary>An engraved exercise: its systems from first to last.</summary>
/// <param name="Systems">At least one.</param>
/// <param name="SpaceMm">Distance of two staff lines.</param>
public sealed record Score(ImmutableArray<ScoreSystem> Systems, double SpaceMm);

/// <summary>One system: staff, tab, or both, over the width asked for. Its upper left corner is 0, 0.</summary>
public sealed record ScoreSystem
{
    /// <summary>Counted from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Number of its first bar; a pick-up is bar 0.</summary>
    public required int FirstBar { get; init; }

    /// <summary>Number of its last bar.</summary>
    public required int LastBar { get; init; }

    /// <summary>Everything drawn, in millimetres.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>Notes and rests in order of time.</summary>
    public required ImmutableArray<ScoreColumn> Columns { get; init; }

    /// <summary>Width asked for, in millimetres.</summary>
    public required double WidthMm { get; init; }

    /// <summary>From the highest to the lowest ink, in millimetres.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Where the staff lines begin to carry notes: behind clef, key and metre.</summary>
    public required double MusicStartMm { get; init; }

    /// <summary>Where the staff lines end; the width, or less on a short last system.</summary>
    public required double MusicEndMm { get; init; }

    /// <summary>The staff lines from top to bottom; null without a staff.</summary>
    public StaffBand? Staff { get; init; }

    /// <summary>The tab lines from string 1 to the last; null without tab.</summary>
    public StaffBand? Tab { get; init; }

    /// <summary>The strip of both hands under the music; null without one.</summary>
    public StripBand? Strip { get; init; }
}

/// <summary>Where the lines of a staff lie in a system, in millimetres.</summary>
/// <param name="TopMm">The highest line.</param>
/// <param name="BottomMm">The lowest line.</param>
public readonly record struct StaffBand(double TopMm, double BottomMm);

/// <summary>Where the strip of both hands lies in a system, in millimetres.</summary>
/// <param name="TopMm">As high as the fretting hand's half reaches.</param>
/// <param name="MiddleMm">The middle line.</param>
/// <param name="BottomMm">As low as the picking hand's half reaches.</param>
public readonly record struct StripBand(double TopMm, double MiddleMm, double BottomMm)
{
    /// <summary>The middle of the fretting hand's signs.</summary>
    public double FrettingSignsMm { get; init; }

    /// <summary>The middle of the picking hand's signs.</summary>
    public double PickingSignsMm { get; init; }
}

/// <summary>What begins at one time: heads one above another, or a rest.</summary>
/// <param name="Onset">As a fraction of a whole note after the first bar line.</param>
/// <param name="Length">Written length of this part, as a fraction of a whole note.</param>
/// <param name="XMm">Centre of the note heads, the tab numbers and all that belongs to them.</param>
/// <param name="Heads">Empty for a rest.</param>
public sealed record ScoreColumn(
    Fraction Onset,
    Fraction Length,
    double XMm,
    ImmutableArray<ScoreHead> Heads
);

/// <summary>A note head with its tab number.</summary>
/// <param name="Note">Index of the note.</param>
/// <param name="Place">String and fret.</param>
/// <param name="TiedBack">Whether it only holds on the head before.</param>
public readonly record struct ScoreHead(int Note, Place Place, bool TiedBack);
