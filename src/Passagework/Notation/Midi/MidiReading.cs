using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>What is taken out of a Standard MIDI File.</summary>
public sealed record MidiReading
{
    /// <summary>Number of the track as <see cref="MidiImport.Tracks"/> lists them, from 1; null for the one with most notes that is no drum track.</summary>
    public int? Track { get; init; }

    /// <summary>The instrument that the line is meant for.</summary>
    public Fretboard Instrument { get; init; } = Fretboard.Standard;

    /// <summary>Whether only the highest of the notes that begin together is read; else chords are kept as far as one hand holds them.</summary>
    public bool TopNotesOnly { get; init; }

    /// <summary>Whether a steady long and short is read as swing; else times are taken as they are played.</summary>
    public bool FindSwing { get; init; } = true;
}
