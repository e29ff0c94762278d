using System.Collections.Immutable;

namespace Passagework.Engraving.Scores;

/// <summary>One line of music with every column in its place.</summary>
internal sealed record SystemPlan
{
    /// <summary>Counted from 0.</summary>
    public required int Index { get; init; }

    /// <summary>Its columns, their x set.</summary>
    public required ImmutableArray<Column> Columns { get; init; }

    /// <summary>Whether it begins with a whole bar, not within one.</summary>
    public required bool StartsBar { get; init; }

    /// <summary>Clef, key, metre.</summary>
    public required LinePrefix Prefix { get; init; }

    /// <summary>Where the lines end.</summary>
    public required double EndX { get; init; }

    /// <summary>Bars and parts of bars.</summary>
    public required ImmutableArray<PlannedBar> Bars { get; init; }

    /// <summary>The column after the last one; null at the end of the piece.</summary>
    public required Column? Next { get; init; }
}

/// <summary>A bar, or the part of one that is on a line, in spaces.</summary>
/// <param name="Bar">Which, from 0.</param>
/// <param name="StartX">Where its room begins.</param>
/// <param name="EndX">Left edge of what closes it.</param>
/// <param name="Opening">What opens it, drawn at its start.</param>
/// <param name="Closing">What closes it; none where it goes on in the next line.</param>
internal sealed record PlannedBar(int Bar, double StartX, double EndX, BarEdge Opening, BarEdge Closing);
