using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Standard MIDI Files, written and read. What they carry and what not is described in <c>docs/midi.md</c>.</summary>
/// <remarks>
/// What <see cref="Write"/> writes, <see cref="Read"/> reads back with equal keys, onsets and lengths, swing included.
/// Files from elsewhere are read as a line of one note at a time, with a warning wherever something had to be guessed.
/// </remarks>
public static class Midi
{
    /// <summary>Largest file that is read, in bytes.</summary>
    public const int MostBytes = 4 << 20;

    /// <summary>Writes what is played as a Standard MIDI File; the same input gives the same bytes.</summary>
    /// <exception cref="ArgumentException">A note begins before the first bar line.</exception>
    public static byte[] Write(Realization realization, MidiWriting? options = null) =>
        new MidiScore(realization, options ?? new MidiWriting()).ToBytes();

    /// <summary>Reads one track of a Standard MIDI File as a line of pitches whose places are free.</summary>
    /// <returns>
    /// The line with its warnings, or the reason why it can't be read: too large, no Standard MIDI File, cut off,
    /// timed by film frames, no notes, too many, or a pitch that the instrument hasn't got.
    /// </returns>
    public static Outcome<MidiImport> Read(ReadOnlySpan<byte> file, MidiReading? options = null)
    {
        if (file.Length > MostBytes)
        {
            return new Fault("the file is larger than 4 MB", "", "at most 4,194,304 bytes");
        }

        var chosen = options ?? new MidiReading();
        var findings = new MidiFindings();
        return MidiFileReader
            .Read(file, findings)
            .Then(sequence => MidiParts.Choose(sequence, chosen))
            .Then(choice => MidiAssembly.Build(choice, chosen, findings));
    }
}
