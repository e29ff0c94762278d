using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>What of a MusicXML file is read, and how.</summary>
public sealed record MusicXmlReading
{
    /// <summary>Id, name or number (from 1) of the part; null for the first with pitched notes.</summary>
    public string? Part { get; init; }

    /// <summary>Name of the voice; null for the one with most notes, notation before tab.</summary>
    public string? Voice { get; init; }

    /// <summary>Whether repeats and endings are written out as they are played.</summary>
    public bool UnrollRepeats { get; init; }

    /// <summary>Whether only the highest of the notes that begin together is read; else chords are kept as far as one hand holds them.</summary>
    public bool TopNotesOnly { get; init; }

    /// <summary>The instrument where the file tells no strings.</summary>
    public Fretboard Instrument { get; init; } = Fretboard.Standard;
}
