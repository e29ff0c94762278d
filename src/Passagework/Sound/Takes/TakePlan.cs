using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>
/// How somebody is to play an exercise into a microphone: tempo, timing, slips, ringing strings, dynamics, and what the
/// recording adds. The default of every value is the faultless one.
/// </summary>
/// <remarks>
/// Notes are counted from 0 in the order of playing, further times through going on. A string change goes to a
/// neighbouring string, a skip further. <see cref="Check"/> holds the ranges.
/// </remarks>
public sealed record TakePlan
{
    /// <summary>The tempo that was asked for, felt beats a minute, 20 to 400.</summary>
    public required double AskedBpm { get; init; }

    /// <summary>Mean tempo really played over the asked one, 0.25 to 4.</summary>
    public double TempoRatio { get; init; } = 1;

    /// <summary>
    /// By how many percent the tempo at the last bar line lies above that at the first, −50 to 100: a positive take
    /// rushes, little by little.
    /// </summary>
    public double DriftPercent { get; init; }

    /// <summary>Times through, 1 to 20.</summary>
    public int Times { get; init; } = 1;

    /// <summary>Standard deviation of the strokes from the curve, 0 to 200 ms; cut at 0.42 of the way to a neighbour.</summary>
    public double SpreadMs { get; init; }

    /// <summary>By how much up-strokes are late, −200 to 200 ms.</summary>
    public double UpStrokeMs { get; init; }

    /// <summary>By how much notes on a neighbouring string are late, −200 to 200 ms.</summary>
    public double StringChangeMs { get; init; }

    /// <summary>By how much notes beyond a skipped string are late, −200 to 200 ms.</summary>
    public double StringSkipMs { get; init; }

    /// <summary>By how much the first note in another position is late, −200 to 200 ms.</summary>
    public double ShiftMs { get; init; }

    /// <summary>By how much the notes at each place of their group are late, −200 to 200 ms; places beyond are on time.</summary>
    public ImmutableArray<double> ByPlaceMs { get; init; } = [];

    /// <summary>The chance of a note not to be played, 0 to 1.</summary>
    public double MissedShare { get; init; }

    /// <summary>The chance of another note in its place, 0 to 1.</summary>
    public double WrongShare { get; init; }

    /// <summary>The chance of one stroke too many after a note, 0 to 1; only where 105 ms are free and no slur follows.</summary>
    public double ExtraShare { get; init; }

    /// <summary>Notes that are missed in any case.</summary>
    public ImmutableArray<int> MissedNotes { get; init; } = [];

    /// <summary>Notes that are wrong in any case.</summary>
    public ImmutableArray<int> WrongNotes { get; init; } = [];

    /// <summary>Notes after which there is a stroke too many in any case.</summary>
    public ImmutableArray<int> ExtraNotes { get; init; } = [];

    /// <summary>The share of moves to another string over which the old string rings on, 0 to 1.</summary>
    public double RingingShare { get; init; }

    /// <summary>The shortest such ringing, 1 to 5000 ms.</summary>
    public double RingLeastMs { get; init; } = 80;

    /// <summary>The longest, 1 to 5000 ms; a string that is struck again ends it sooner.</summary>
    public double RingMostMs { get; init; } = 250;

    /// <summary>Mean MIDI velocity, 1 to 127; null for the velocities of the performance.</summary>
    public double? MeanVelocity { get; init; }

    /// <summary>Standard deviation of the velocities, 0 to 60.</summary>
    public double VelocitySpread { get; init; }

    /// <summary>What the first note of a group is louder by, in velocity, −60 to 60.</summary>
    public double GroupAccent { get; init; }

    /// <summary>Seconds before the first bar line, 0.2 to 10.</summary>
    public double LeadInSeconds { get; init; } = 0.8;

    /// <summary>By how much everything comes later in the file, 0 to 1000 ms.</summary>
    public double LatencyMs { get; init; }

    /// <summary>By how much the whole guitar is sharp, −100 to 100 cents.</summary>
    public double TuningCents { get; init; }

    /// <summary>Level beside the usual one, which lies 6 dB below the string model, −80 to 20 dB.</summary>
    public double LevelDb { get; init; }

    /// <summary>By how much the loudest sample would pass full scale, 0 to 40 dB, where it is clipped; null leaves the level.</summary>
    public double? OverloadDb { get; init; }

    /// <summary>How far room noise lies below the guitar while it sounds, 0 to 100 dB; null for none.</summary>
    public double? NoiseUnderDb { get; init; }

    /// <summary>How far mains hum lies below it, 0 to 100 dB; null for none.</summary>
    public double? HumUnderDb { get; init; }

    /// <summary>How far the energy of the room's echo lies below the guitar's, 0 to 60 dB; null for none.</summary>
    public double? RoomUnderDb { get; init; }

    /// <summary>Seconds in which the echo falls by 60 dB, 0.05 to 5.</summary>
    public double RoomSeconds { get; init; } = 0.35;

    /// <summary>How far a click at the asked tempo lies below the guitar's peak, 0 to 60 dB; null for none.</summary>
    public double? ClickUnderDb { get; init; }

    /// <summary>The first value out of range by its name, with the range; null for a plan that can be played.</summary>
    public Fault? Check() => TakePlanRules.Check(this);

    /// <summary>Content equality.</summary>
    public bool Equals(TakePlan? other) =>
        other is not null
        && TakeNumbers.All.All(number => number.Of(this).Equals(number.Of(other)))
        && TakeNumbers.Lists.All(list => list.Of(this).SequenceEqual(list.Of(other)));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(AskedBpm, TempoRatio, SpreadMs, LeadInSeconds);
}
