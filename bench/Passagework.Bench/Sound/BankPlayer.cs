using System.Diagnostics;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Bench.Sound;

/// <summary>One note for the sound bank.</summary>
/// <param name="Channel">Its MIDI channel.</param>
/// <param name="Program">General MIDI program, from 0.</param>
/// <param name="Key">MIDI key.</param>
/// <param name="Start">Start in milliseconds.</param>
/// <param name="End">End in milliseconds.</param>
internal sealed record BankNote(byte Channel, byte Program, byte Key, int Start, int End);

/// <summary>Plays notes from a sound bank by fluidsynth, without effects.</summary>
internal static class BankPlayer
{
    private const byte Velocity = 92;

    /// <summary>The samples, and how long the program ran.</summary>
    public static (float[] Samples, TimeSpan Time) Play(string bank, IEnumerable<BankNote> notes)
    {
        var folder = Directory.CreateTempSubdirectory("bank");
        var midi = System.IO.Path.Combine(folder.FullName, "notes.mid");
        var wave = System.IO.Path.Combine(folder.FullName, "notes.wav");
        File.WriteAllBytes(midi, Midi(notes));
        string[] words =
        [
            "-ni",
            "-q",
            "-r",
            "44100",
            "-R",
            "0",
            "-C",
            "0",
            "-g",
            "0.6",
            "-O",
            "s16",
            "-T",
            "wav",
        ];
        var watch = Stopwatch.StartNew();
        using (var player = Process.Start("fluidsynth", [.. words, "-F", wave, bank, midi]))
        {
            player.WaitForExit();
        }

        var time = watch.Elapsed;
        var samples = WavFile.ReadStereo(wave);
        folder.Delete(true);
        return (samples, time);
    }

    // Half a second a quarter and 500 ticks a quarter: a tick is a millisecond.
    private static byte[] Midi(IEnumerable<BankNote> notes)
    {
        List<(int At, byte[] Bytes)> events = [(0, [0xFF, 0x51, 3, 0x07, 0xA1, 0x20])];
        foreach (var note in notes)
        {
            events.Add((note.Start, [(byte)(0xC0 | note.Channel), note.Program]));
            events.Add((note.Start, [(byte)(0x90 | note.Channel), note.Key, Velocity]));
            events.Add((note.End, [(byte)(0x80 | note.Channel), note.Key, 0]));
        }

        var track = new List<byte>();
        var now = 0;
        foreach (var (at, bytes) in events.OrderBy(e => e.At))
        {
            track.AddRange(Ticks(at - now));
            track.AddRange(bytes);
            now = at;
        }

        track.AddRange([0, 0xFF, 0x2F, 0]);
        byte[] head = [.. "MThd"u8, 0, 0, 0, 6, 0, 0, 0, 1, 0x01, 0xF4, .. "MTrk"u8];
        byte[] length = [0, 0, (byte)(track.Count >> 8), (byte)(track.Count & 255)];
        return [.. head, .. length, .. track];
    }

    private static byte[] Ticks(int ticks) =>
        ticks < 128 ? [(byte)ticks] : [(byte)(0x80 | (ticks >> 7)), (byte)(ticks & 127)];
}
