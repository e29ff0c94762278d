using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>Pitch of the string model, by the turn of the fundamental's phase.</summary>
public sealed class TuningTests
{
    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Every_fret_of_every_string_is_within_a_cent(GuitarSound sound)
    {
        var worst = 0.0;
        for (var s = 1; s <= 6; s++)
        {
            for (var fret = 0; fret <= 22; fret++)
            {
                var hertz = Tone.Hertz(Plucks.Open[s - 1] + fret);
                var samples = Plucks.Render(sound, 1.1, Plucks.Pluck(s, fret));
                var heard = Tone.Frequency(samples.AsSpan(Plucks.Rate / 5), Plucks.Rate, hertz);
                worst = Math.Max(worst, Math.Abs(Tone.Cents(hertz, heard)));
            }
        }

        Assert.InRange(worst, 0, 1);
    }

    [Fact]
    public void A_sine_of_known_pitch_is_measured_within_a_thousandth_of_a_cent()
    {
        var samples = new float[Plucks.Rate];
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = (float)(Math.Exp(-i / 9000.0) * Math.Sin(Math.Tau * 331.7 * i / Plucks.Rate));
        }

        Assert.Equal(331.7, Tone.Frequency(samples, Plucks.Rate, 329.6), 2e-4);
    }

    [Theory]
    [InlineData(22_050)]
    [InlineData(48_000)]
    [InlineData(96_000)]
    [InlineData(192_000)]
    public void Pitch_does_not_depend_on_the_sample_rate(int rate)
    {
        foreach (var (s, fret) in new[] { (6, 0), (3, 7), (1, 22) })
        {
            var note = Plucks.Pluck(s, fret);
            var samples = new float[rate];
            new GuitarRenderer(GuitarSound.CleanElectric, [note], rate).Render(samples, 0);

            var heard = Tone.Frequency(samples.AsSpan(rate / 10), rate, Tone.Hertz(note.Key));

            Assert.Equal(0, Tone.Cents(Tone.Hertz(note.Key), heard), 0.3);
        }
    }

    [Theory]
    [InlineData(StringAction.HammerOn, 7)]
    [InlineData(StringAction.PullOff, 2)]
    [InlineData(StringAction.Slide, 10)]
    public void A_slur_lands_on_its_note(StringAction action, int fret)
    {
        var first = Plucks.Pluck(4, 5, 0, 0.4);
        var second = Plucks.Pluck(4, fret, 0.4) with { Action = action };
        var samples = Plucks.Render(GuitarSound.CleanElectric, 1.5, first, second);

        var heard = Tone.Frequency(samples.AsSpan(Plucks.Rate / 2), Plucks.Rate, Tone.Hertz(second.Key));

        Assert.Equal(0, Tone.Cents(Tone.Hertz(second.Key), heard), 1.0);
    }

    [Theory]
    [InlineData(2, 8, 2.0)]
    [InlineData(3, 7, 1.0)]
    [InlineData(1, 12, 4.0)]
    [InlineData(5, 3, 0.5)]
    [InlineData(2, 10, -2.0)]
    public void A_bend_reaches_its_target(int s, int fret, double semitones)
    {
        var note = Plucks.Pluck(s, fret) with { Bend = [(0.2, 0), (0.4, semitones)] };
        var samples = Plucks.Render(GuitarSound.CleanElectric, 1.2, note);
        var target = Tone.Hertz(note.Key + semitones);

        var heard = Tone.Frequency(samples.AsSpan(Plucks.Rate * 41 / 100), Plucks.Rate, target, 0.2);

        Assert.Equal(0, Tone.Cents(target, heard), 1.0);
    }

    [Fact]
    public void Vibrato_rises_from_the_note_to_its_height_and_back()
    {
        var note = Plucks.Pluck(2, 8) with { Vibrato = (2, 0.5) };
        var samples = Plucks.Render(GuitarSound.CleanElectric, 1.6, note);
        var hertz = Tone.Hertz(note.Key);

        // The highest point is at 0.75 s, the lowest at 1 s; short windows about them see a little less than all.
        var high = Tone.Frequency(samples.AsSpan((int)(0.72 * Plucks.Rate), 2700), Plucks.Rate, hertz, 0.05);
        var low = Tone.Frequency(samples.AsSpan((int)(0.97 * Plucks.Rate), 2700), Plucks.Rate, hertz, 0.05);

        Assert.InRange(Tone.Cents(hertz, high), 44, 51);
        Assert.InRange(Tone.Cents(hertz, low), -1, 6);
    }

    [Fact]
    public void A_slide_goes_from_fret_to_fret()
    {
        var first = Plucks.Pluck(3, 2, 0, 0.5);
        var slide = Plucks.Pluck(3, 7, 0.5) with { Action = StringAction.Slide };
        var path = new Passagework.Sound.Strings.PitchPath(Plucks.Rate);
        var part = new Passagework.Sound.Strings.StringPart(
            [(first, 0), (slide, 1)],
            Passagework.Sound.Strings.Voicing.For(GuitarSound.CleanElectric),
            Plucks.Rate
        );

        // 70 ms for five frets: 14 ms each, of which the finger rests 65 %.
        double[] keys = [.. new[] { 0.42, 0.435, 0.449, 0.463, 0.477, 0.491, 0.5 }.Select(At)];

        Assert.Equal([57, 57, 58, 59, 60, 61, 62], keys, (a, b) => Math.Abs(a - b) < 1e-6);
        double At(double seconds) => path.KeyAt(part.Strokes[0], seconds * Plucks.Rate);
    }
}
