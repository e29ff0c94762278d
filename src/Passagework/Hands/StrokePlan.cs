using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>The picking hand's action for every note.</summary>
/// <param name="Strokes">One for each note of the line; none where a note is slurred.</param>
/// <param name="Cost">The planner's objective: powers of moves against the time there is, less small preferences.</param>
public sealed record StrokePlan(ImmutableArray<Stroke> Strokes, double Cost)
{
    /// <summary>The struck notes in order, with what the hand remembers.</summary>
    internal ImmutableArray<StruckNote> Struck { get; init; } = [];
}

/// <summary>A struck note.</summary>
/// <param name="Note">Its index in the line.</param>
/// <param name="State">How it is struck.</param>
/// <param name="Gap">Pulses since the stroke before it; 0 for the first.</param>
/// <param name="Demand">What the stroke asks after the one before it; none for the first.</param>
internal readonly record struct StruckNote(int Note, StrokeState State, double Gap, Demand Demand);
