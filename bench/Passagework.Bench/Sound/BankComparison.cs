using System.Diagnostics;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Bench.Sound;

/// <summary>Ten notes of the model beside the same notes of a recorded sound bank, played by fluidsynth.</summary>
internal static class BankComparison
{
    private const int Every = 4;

    // Program numbers of General MIDI, from 0; string and fret as the model plays them.
    private static readonly (GuitarSound Sound, byte Program, int String, int Fret)[] Notes =
    [
        (GuitarSound.Nylon, 24, 6, 0),
        (GuitarSound.Nylon, 24, 4, 2),
        (GuitarSound.Nylon, 24, 1, 0),
        (GuitarSound.SteelString, 25, 6, 0),
        (GuitarSound.SteelString, 25, 4, 2),
        (GuitarSound.SteelString, 25, 1, 0),
        (GuitarSound.SteelString, 25, 1, 12),
        (GuitarSound.CleanElectric, 27, 6, 0),
        (GuitarSound.CleanElectric, 27, 4, 2),
        (GuitarSound.CleanElectric, 27, 1, 0),
    ];

    public static void Print(string bank)
    {
        var folder = Directory.CreateTempSubdirectory("bank");
        var midi = System.IO.Path.Combine(folder.FullName, "notes.mid");
        var wave = System.IO.Path.Combine(folder.FullName, "notes.wav");
        File.WriteAllBytes(midi, Midi());
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
        using (var player = Process.Start("fluidsynth", [.. words, "-F", wave, bank, midi]))
        {
            player.WaitForExit();
        }

        var recorded = WavFile.ReadStereo(wave);
        Console.WriteLine(
            "sound, string/fret: attack ms, decay dB/s over 0.1-0.6 s, centroid Hz at 30-215 ms and 0.5-0.7 s"
        );
        for (var i = 0; i < Notes.Length; i++)
        {
            var (sound, _, s, fret) = Notes[i];
            var action = sound is GuitarSound.Nylon ? StringAction.Finger : StringAction.Down;
            var model = Plucks.Render(sound, 2, Plucks.Pluck(s, fret, 0.01, 1.5) with { Action = action });
            var bankNote = recorded.AsSpan(i * Every * Plucks.Rate, 2 * Plucks.Rate);
            Console.WriteLine(
                $"{sound, -14} {s}/{fret, -2}  model {Figures(model)}   bank {Figures(bankNote)}"
            );
        }

        folder.Delete(true);
    }

    private static string Figures(ReadOnlySpan<float> samples)
    {
        const int Rate = Plucks.Rate;
        var peak = Tone.Peak(samples);
        var start = 0;
        while (Math.Abs(samples[start]) < 0.05 * peak)
        {
            start++;
        }

        var note = samples[start..];
        var fall =
            Tone.Decibels(Tone.Rms(note.Slice(Rate / 10, Rate / 10)))
            - Tone.Decibels(Tone.Rms(note.Slice(Rate / 2, Rate / 10)));
        var attack = 1000 * Tone.Attack(samples[Math.Max(0, start - 400)..(start + 8000)], Rate);
        var early = Spectrum.Centroid(note.Slice(Rate * 3 / 100, 8192), Rate);
        var late = Spectrum.Centroid(note.Slice(Rate / 2, 8192), Rate);
        return $"{attack, 5:F1} {fall / 0.4, 6:F1} {early, 6:F0} {late, 6:F0}";
    }

    // One quarter of half a second at 500 ticks: a tick is a millisecond.
    private static byte[] Midi()
    {
        var track = new List<byte> { 0, 0xFF, 0x51, 3, 0x07, 0xA1, 0x20 };
        foreach (var (_, program, s, fret) in Notes)
        {
            var key = (byte)(Plucks.Open[s - 1] + fret);
            track.AddRange([0, 0xC0, program, 0, 0x90, key, 92]);
            track.AddRange([0x8B, 0x5C, 0x80, key, 0]);
            track.AddRange([.. Ticks((Every * 1000) - 1500 + 8), 0xB0, 7, 100]);
        }

        track.AddRange([0, 0xFF, 0x2F, 0]);
        byte[] head = [.. "MThd"u8, 0, 0, 0, 6, 0, 0, 0, 1, 0x01, 0xF4, .. "MTrk"u8];
        byte[] length = [0, 0, (byte)(track.Count >> 8), (byte)(track.Count & 255)];
        return [.. head, .. length, .. track];
    }

    private static byte[] Ticks(int ticks) => [(byte)(0x80 | (ticks >> 7)), (byte)(ticks & 127)];
}
