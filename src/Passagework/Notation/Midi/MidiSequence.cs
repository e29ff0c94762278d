namespace Passagework.Notation;

/// <summary>A file as it stands: its tracks with notes paired, nothing interpreted.</summary>
/// <param name="Format">0 one track, 1 tracks that sound together, 2 tracks on their own.</param>
/// <param name="Division">Ticks per quarter note, above 0.</param>
/// <param name="Tracks">In the order of the file.</param>
internal sealed record MidiSequence(int Format, int Division, IReadOnlyList<MidiTrackData> Tracks);

/// <summary>One track as it stands.</summary>
internal sealed class MidiTrackData
{
    public string Name { get; set; } = "";

    public MidiRemark? Remark { get; set; }

    public List<MidiSound> Sounds { get; } = [];

    /// <summary>Microseconds per quarter note.</summary>
    public List<(long Tick, int Microseconds)> Tempi { get; } = [];

    /// <summary>Upper number and power of two of the lower.</summary>
    public List<(long Tick, int Beats, int Power)> Meters { get; } = [];

    public List<(long Tick, MidiKey Key)> Keys { get; } = [];
}

/// <summary>A note from its on to its off, in ticks.</summary>
internal readonly record struct MidiSound(long Start, long End, byte Key, byte Channel);
