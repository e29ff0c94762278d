using System.Globalization;

namespace Passagework.Rhythm;

/// <summary>Where a pulse falls: bar, beat and pulse of the beat.</summary>
/// <remarks>The default value is the first downbeat.</remarks>
public readonly record struct BarPlace
{
    private readonly int _perBeatLessOne;

    private BarPlace(long bar, int beat, int pulse, int perBeat)
    {
        Bar = bar;
        Beat = beat;
        Pulse = pulse;
        _perBeatLessOne = perBeat - 1;
    }

    /// <summary>Bars before this one.</summary>
    public long Bar { get; }

    /// <summary>Beats of the bar before this one.</summary>
    public int Beat { get; }

    /// <summary>Pulses of the beat before this one.</summary>
    public int Pulse { get; }

    /// <summary>Whether it is on a beat.</summary>
    public bool IsOnBeat => Pulse == 0;

    /// <summary>Whether it is on the first beat of a bar.</summary>
    public bool IsDownbeat => Beat == 0 && Pulse == 0;

    /// <summary>The place of a pulse counted from the first bar line.</summary>
    /// <param name="pulse">Not negative.</param>
    /// <param name="perBeat">Pulses in a beat, at least 1.</param>
    /// <param name="beatsPerBar">Beats in a bar, at least 1.</param>
    public static BarPlace Of(long pulse, int perBeat, int beatsPerBar)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pulse);
        ArgumentOutOfRangeException.ThrowIfLessThan(perBeat, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(beatsPerBar, 1);
        var beats = pulse / perBeat;
        return new BarPlace(beats / beatsPerBar, (int)(beats % beatsPerBar), (int)(pulse % perBeat), perBeat);
    }

    /// <summary>Such as <c>beat 3</c>, or <c>off (+2 of 4)</c> between beats.</summary>
    public override string ToString() =>
        IsOnBeat
            ? string.Create(CultureInfo.InvariantCulture, $"beat {Beat + 1}")
            : string.Create(CultureInfo.InvariantCulture, $"off (+{Pulse} of {_perBeatLessOne + 1})");
}
