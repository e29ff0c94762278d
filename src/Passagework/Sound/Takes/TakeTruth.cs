using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Sound.Takes;

/// <summary>What became of a note.</summary>
public enum TruthKind
{
    /// <summary>As written.</summary>
    Played,

    /// <summary>Not struck at all.</summary>
    Missed,

    /// <summary>Another note in its place.</summary>
    Wrong,

    /// <summary>A stroke that the score has not.</summary>
    Extra,
}

/// <summary>
/// Instants at which a note, rendered alone, first reaches a hundredth, a tenth and a half of the peak of its first 40 ms;
/// seconds from the first sample of the take.
/// </summary>
public readonly record struct AttackTimes(double Hundredth, double Tenth, double Half);

/// <summary>What is heard of a note.</summary>
/// <param name="Attack">When it begins to sound.</param>
/// <param name="Midi">The key played, without the take's tuning.</param>
/// <param name="Velocity">How hard, 1 to 127.</param>
/// <param name="EndSeconds">When its finger lifts or its string is struck again.</param>
/// <param name="RingSeconds">How long it sounds on after the next written note has begun on another string.</param>
public sealed record TruthSound(
    AttackTimes Attack,
    int Midi,
    int Velocity,
    double EndSeconds,
    double RingSeconds
);

/// <summary>One note of a take as it was planned and as it sounds; seconds from the first sample, to a microsecond.</summary>
public sealed record TruthNote
{
    /// <summary>What became of it.</summary>
    public required TruthKind Kind { get; init; }

    /// <summary>Index in the score; null for a stroke too many.</summary>
    public required int? ScoreIndex { get; init; }

    /// <summary>The time through, from 0.</summary>
    public required int Pass { get; init; }

    /// <summary>When its stroke was planned, deviation, lead-in and latency included.</summary>
    public required double PlannedSeconds { get; init; }

    /// <summary>By how much that is late on the curve of the tempo really played; 0 for a stroke too many.</summary>
    public required double DeviationMs { get; init; }

    /// <summary>What is heard; null for a missed note.</summary>
    public required TruthSound? Sound { get; init; }

    /// <summary>The key of the score; null for a stroke too many.</summary>
    public required int? ExpectedMidi { get; init; }

    /// <summary>The string played, or missed.</summary>
    public required int String { get; init; }

    /// <summary>The fret played, or missed; from the capo.</summary>
    public required int Fret { get; init; }

    /// <summary>What sets the string going.</summary>
    public required StringAction Technique { get; init; }

    /// <summary>The picking hand's action in the score; for a stroke too many, that of the note before.</summary>
    public required Stroke Stroke { get; init; }

    /// <summary>Group and place in it, from 0; null outside groups and for a stroke too many.</summary>
    public required (int Group, int Place)? InGroup { get; init; }

    /// <summary>Strings from the written note before, positive to thinner ones; beyond 1 a string is skipped.</summary>
    public required int Crossing { get; init; }

    /// <summary>Whether the fretting hand comes to another position with it.</summary>
    public required bool Shifted { get; init; }
}

/// <summary>A note of the score as a listener may know it.</summary>
/// <param name="Index">Index in the score; the tones of a chord share it.</param>
/// <param name="Beat">Felt beats after the first bar line, swing included.</param>
/// <param name="Midi">The key.</param>
/// <param name="String">The string.</param>
/// <param name="Fret">The fret, from the capo.</param>
/// <param name="Stroke">The picking hand's action.</param>
/// <param name="InGroup">Group and place in it, from 0; null outside groups.</param>
/// <param name="Crossing">Strings from the note before, positive to thinner ones.</param>
public sealed record ScoreNote(
    int Index,
    double Beat,
    int Midi,
    int String,
    int Fret,
    Stroke Stroke,
    (int Group, int Place)? InGroup,
    int Crossing
);

/// <summary>A recording that never was, with everything known about it.</summary>
/// <param name="Samples">One channel, −1 to 1.</param>
/// <param name="SampleRate">Samples a second.</param>
/// <param name="Truth">Its notes in order of time, missed ones where they should have been.</param>
/// <param name="Score">What should have been played, one time through.</param>
/// <param name="Level">What the recording came to.</param>
public sealed record Take(
    float[] Samples,
    int SampleRate,
    ImmutableArray<TruthNote> Truth,
    ImmutableArray<ScoreNote> Score,
    TakeLevel Level
);

/// <summary>Figures of a finished recording.</summary>
/// <param name="ActiveDbfs">The guitar alone while it sounds, before it is clipped: root of the mean square in dB over full scale.</param>
/// <param name="ClippedShare">The share of samples that were cut at full scale.</param>
public readonly record struct TakeLevel(double ActiveDbfs, double ClippedShare);
