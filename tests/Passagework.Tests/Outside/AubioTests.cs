using System.Collections.Immutable;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Outside;

/// <summary>The string model heard by aubio (Debian's aubio-tools): pitch by YIN, onsets blind.</summary>
public sealed class AubioTests
{
    private const double Each = 0.4;

    /// <summary>What aubio's YIN reads wrongly on exact tones of these pitches: measured 0.47 (sine), 0.65 (sawtooth).</summary>
    private const double OwnError = 0.7;

    private static readonly ImmutableArray<(int String, int Fret)> Places =
    [
        .. from s in Enumerable.Range(1, 6) from fret in Enumerable.Range(0, 23) select (s, fret),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(1000)]
    public void Exact_tones_show_the_listener_s_own_error(int partials)
    {
        var samples = new float[(int)(Each * Places.Length * Plucks.Rate) + 4096];
        for (var i = 0; i < Places.Length; i++)
        {
            AddTone(samples.AsSpan((int)(i * Each * Plucks.Rate)), Hertz(i), partials);
        }

        Assert.InRange(Errors(samples).Max(Math.Abs), 0.01, OwnError);
    }

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Every_fret_is_heard_within_a_cent(GuitarSound sound)
    {
        StringEvent[] notes =
        [
            .. Places.Select((p, i) => Plucks.Pluck(p.String, p.Fret, i * Each, (i + 1) * Each)),
        ];
        var samples = Plucks.Render(sound, (Each * Places.Length) + 0.1, notes);

        Assert.InRange(Errors(samples).Max(Math.Abs), 0, 1);
    }

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Picked_notes_are_found_by_a_blind_listener(GuitarSound sound)
    {
        // Sixteenths at 110: up and down a box, both strokes, strengths from soft to hard. The window holds two
        // periods of the lowest note; at aubio's own settings soft notes after loud ones are missed, as in recordings.
        const double Apart = 60 / 110.0 / 4;
        StringEvent[] notes = [.. Enumerable.Range(0, 240).Select(i => Line(i, Apart))];
        var samples = Plucks.Render(sound, (Apart * notes.Length) + 1, notes);
        string[] words = ["-O", "complex", "-t", "0.1", "-B", "2048", "-H", "256"];
        var heard = Aubio.Said("aubioonset", samples, words).Select(line => line[0]).ToList();

        var found = notes.Count(note => heard.Any(h => Math.Abs(h - note.Seconds) < 0.05));

        Assert.InRange(found / 240.0, 0.98, 1);
        Assert.InRange(heard.Count, 235, 245);
    }

    private static StringEvent Line(int i, double apart)
    {
        var step = i % 24 < 12 ? i % 12 : 11 - (i % 12);
        return Plucks.Pluck(
            6 - (step / 2),
            5 + (step % 2 * 3),
            0.3 + (i * apart),
            0.3 + ((i + 1) * apart)
        ) with
        {
            Action = i % 2 == 0 ? StringAction.Down : StringAction.Up,
            Strength = 0.45 + (0.12 * (i % 5)),
        };
    }

    // Cents by which the middle one of the readings inside each note is off.
    private static double[] Errors(float[] samples)
    {
        var lines = Aubio.Said("aubiopitch", samples, ["-p", "yin", "-B", "2048", "-H", "1024"]).ToArray();
        return [.. Places.Select((_, i) => Tone.Cents(Hertz(i), Middle(lines, i * Each)))];
    }

    private static double Middle(double[][] lines, double start)
    {
        var inside = lines.Where(line => line[0] > start + 0.12 && line[0] < start + 0.36);
        double[] read = [.. inside.Select(line => line[1]).Order()];
        return read[read.Length / 2];
    }

    private static double Hertz(int place) =>
        Tone.Hertz(Plucks.Open[Places[place].String - 1] + Places[place].Fret);

    private static void AddTone(Span<float> samples, double hertz, int partials)
    {
        for (var n = 1; n <= partials && n * hertz < 8000; n++)
        {
            for (var i = 0; i < Each * Plucks.Rate; i++)
            {
                samples[i] += (float)(0.2 / n * Math.Sin(Math.Tau * n * hertz * i / Plucks.Rate));
            }
        }
    }
}
