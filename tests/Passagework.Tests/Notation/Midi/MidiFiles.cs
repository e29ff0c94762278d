using System.Globalization;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

/// <summary>Small files for tests of reading, and what was read in short words.</summary>
internal static class MidiFiles
{
    /// <summary>The worked example of a file in format 0 with running status and notes ended by velocity 0: a triplet
    /// and two eighths at 80 beats a minute (made for this project, read back by an independent parser).</summary>
    public const string Example =
        "4D546864 00000006 0000 0001 01E0 4D54726B 00000061 "
        + "00FF0303477472 00FF580402021808 00FF59020001 00FF51030B71B0 "
        + "00B00000 002000 00C019 00B06500 006400 000602 002600 00657F 00647F "
        + "00902D64 81202D00 003050 81203000 003250 81203200 003464 81703400 003650 81703600 00FF2F00";

    public static byte[] Bytes(string hex) =>
        Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal));

    /// <summary>A file of one track: 480 ticks a quarter, 4/4, the given event bytes and the end.</summary>
    public static byte[] Track(string events, int division = 480) =>
        File(0, division, "00FF580404021808" + events + "00FF2F00");

    public static byte[] File(int format, int division, params string[] tracks) =>
        [
            .. Bytes($"4D546864 00000006 {format:X4} {tracks.Length:X4} {division:X4}"),
            .. tracks.SelectMany(track => Bytes($"4D54726B {Bytes(track).Length:X8}").Concat(Bytes(track))),
        ];

    /// <summary>Notes as events: key, onset and length in ticks, in any order.</summary>
    public static string Notes(params (int Key, int Onset, int Length)[] notes)
    {
        var events = notes
            .SelectMany(note =>
                new[] { (At: note.Onset, On: 1, note.Key), (At: note.Onset + note.Length, On: 0, note.Key) }
            )
            .OrderBy(change => (change.At, change.On));
        var time = 0;
        var text = "";
        foreach (var (at, on, key) in events)
        {
            text += Variable(at - time) + $"90{key:X2}{on * 80:X2}";
            time = at;
        }

        return text;
    }

    /// <summary>Notes on one key, each up to the next onset, at ticks that a person plays.</summary>
    public static string Played(int end, params int[] onsets) =>
        Notes([.. onsets.Zip([.. onsets.Skip(1), end], (onset, next) => (60, onset, next - onset))]);

    public static string Variable(int value) =>
        value < 0x80
            ? value.ToString("X2", CultureInfo.InvariantCulture)
            : Continued(value >> 7) + $"{value & 0x7F:X2}";

    private static string Continued(int value) =>
        (value < 0x80 ? "" : Continued(value >> 7)) + $"{0x80 | (value & 0x7F):X2}";

    public static MidiImport Read(byte[] file, MidiReading? options = null) =>
        Passagework.Notation.Midi.Read(file, options).OrThrow();

    /// <summary>The fault as one line; "accepted" where there is none.</summary>
    public static string FaultOf(byte[] file, MidiReading? options = null) =>
        Passagework.Notation.Midi.Read(file, options).TryGet(out _, out var fault)
            ? "accepted"
            : fault.ToString();

    public static string Pitches(MidiImport import) =>
        string.Join(' ', Entries(import).Select(entry => entry.IsRest ? "r" : Tones(entry)));

    private static string Tones(Passagework.Exercises.WrittenEntry entry) =>
        string.Join('+', entry.With.Select(tone => tone.Pitch).Prepend(entry.Pitch));

    public static string Lengths(MidiImport import) =>
        string.Join(' ', Entries(import).Select(entry => (entry.IsRest ? "r" : "") + entry.Duration));

    public static string Warnings(MidiImport import) => string.Join('\n', import.Warnings);

    private static IEnumerable<Passagework.Exercises.WrittenEntry> Entries(MidiImport import) =>
        import.Recipe.Written?.Entries ?? [];
}
