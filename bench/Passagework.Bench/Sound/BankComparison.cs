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
        var (recorded, _) = BankPlayer.Play(bank, Notes.Select((_, i) => Note(i)));
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

        PrintSpeed(bank);
    }

    private static BankNote Note(int index)
    {
        var (_, program, s, fret) = Notes[index];
        var start = index * Every * 1000;
        return new(0, program, (byte)(Plucks.Open[s - 1] + fret), start, start + 1500);
    }

    // The same minute from both; loading the bank, seen by a file of one short note, is not counted.
    private static void PrintSpeed(string bank)
    {
        StringEvent[] line =
        [
            .. Enumerable
                .Range(0, 480)
                .Select(i => Plucks.Pluck((i % 6) + 1, i % 5, i * 0.125, (i + 6) * 0.125)),
        ];
        var notes = line.Select(e => new BankNote(
            (byte)(e.String - 1),
            25,
            (byte)e.Key,
            (int)(e.Seconds * 1000),
            (int)(e.EndSeconds * 1000)
        ));
        var loading = BankPlayer.Play(bank, [new(0, 25, 60, 0, 10)]).Time;
        var theirs = BankPlayer.Play(bank, notes).Time - loading;
        Plucks.Render(GuitarSound.SteelString, 60, line);
        var watch = Stopwatch.StartNew();
        Plucks.Render(GuitarSound.SteelString, 60, line);
        Console.WriteLine(
            $"A minute of steel strings, all ringing: model {watch.Elapsed.TotalMilliseconds:F0} ms, "
                + $"fluidsynth {theirs.TotalMilliseconds:F0} ms (loading {loading.TotalMilliseconds:F0} ms left out)"
        );
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
}
