using System.Globalization;

namespace Passagework.Rhythm;

/// <summary>Felt beats per minute.</summary>
/// <remarks>The default value is 60. The range 1 to 1000 is chosen by us: wider than anything played.</remarks>
public readonly record struct Tempo
{
    private readonly double _bpm;

    private Tempo(double bpm) => _bpm = bpm;

    /// <summary>Felt beats per minute, from 1 to 1000.</summary>
    public double BeatsPerMinute => _bpm == 0 ? 60 : _bpm;

    /// <summary>Seconds from one felt beat to the next.</summary>
    public double BeatSeconds => 60 / BeatsPerMinute;

    /// <summary>That many felt beats per minute; false outside 1 to 1000.</summary>
    public static bool TryOf(double beatsPerMinute, out Tempo tempo)
    {
        var legal = beatsPerMinute is >= 1 and <= 1000;
        tempo = legal ? new Tempo(beatsPerMinute) : default;
        return legal;
    }

    /// <summary>Milliseconds from one pulse to the next.</summary>
    /// <param name="notesPerBeat">Pulses per felt beat.</param>
    public double PulseMs(int notesPerBeat) => 60_000 / (BeatsPerMinute * notesPerBeat);

    /// <summary>Equal where the beats per minute are.</summary>
    public bool Equals(Tempo other) => BeatsPerMinute.Equals(other.BeatsPerMinute);

    /// <inheritdoc/>
    public override int GetHashCode() => BeatsPerMinute.GetHashCode();

    /// <summary>Such as <c>92.5</c>.</summary>
    public override string ToString() => BeatsPerMinute.ToString(CultureInfo.InvariantCulture);
}
