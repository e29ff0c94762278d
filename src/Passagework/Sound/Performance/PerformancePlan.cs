using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>How a line is to be heard.</summary>
public sealed record PerformancePlan
{
    /// <summary>Most bars of count-in.</summary>
    public const int MostCountIn = 8;

    /// <summary>How often and how fast.</summary>
    public required TempoPlan Tempo { get; init; }

    /// <summary>The bars that are played each time; null for all.</summary>
    public BarRange? Bars { get; init; }

    /// <summary>Empty bars before the first note, for a click, at the tempo of the first time through.</summary>
    public int CountInBars { get; init; }

    /// <summary>What makes a note loud.</summary>
    public AccentMode Accents { get; init; } = AccentMode.Both;

    /// <summary>How long notes are left sounding.</summary>
    public PlayingManner Manner { get; init; }

    /// <summary>Seconds before the first bar line, in which a rake or a brush into the first note finds room.</summary>
    public double LeadSeconds { get; init; } = 0.1;
}

/// <summary>Bars of a line, counted from 0.</summary>
/// <param name="First">The first of them.</param>
/// <param name="Count">How many, at least 1.</param>
public readonly record struct BarRange(int First, int Count);
