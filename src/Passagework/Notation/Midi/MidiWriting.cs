using System.Collections.Immutable;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>How a Standard MIDI File is written.</summary>
public sealed record MidiWriting
{
    /// <summary>How the tracks lie in the file.</summary>
    public MidiFormat Format { get; init; } = MidiFormat.Simultaneous;

    /// <summary>What makes a note loud; <see cref="AccentMode.None"/> gives every note the same velocity.</summary>
    public AccentMode Accents { get; init; } = AccentMode.Both;

    /// <summary>General MIDI program, 1 to 128; 26 is the steel-string guitar.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside this range.</exception>
    public int Program
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 128);
            field = value;
        }
    } = 26;

    /// <summary>Name of the track with the notes; in a file of one track the title stands there instead.</summary>
    public string TrackName { get; init; } = "Guitar";

    /// <summary>Tempi in place of the recipe's, ascending from 0; empty for the recipe's.</summary>
    public ImmutableArray<TempoChange> Tempi { get; init; } = [];

    /// <summary>What sounds in place of the line's notes, a track each in format 1; empty for these notes.</summary>
    public ImmutableArray<MidiVoice> Voices { get; init; } = [];

    /// <summary>Whether a text event says how swing, pulses and lengths are meant, so that nothing has to be guessed.</summary>
    public bool Remark { get; init; } = true;
}

/// <summary>How the tracks lie in the file.</summary>
public enum MidiFormat
{
    /// <summary>Format 0: everything in one track.</summary>
    Single,

    /// <summary>Format 1: tempo, metre and key in the first track, notes in the second.</summary>
    Simultaneous,
}
