using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>Every technique is heard, in the direction that measurements of real playing report.</summary>
public sealed class TechniqueTests
{
    private static readonly GuitarSound[] Plain =
    [
        GuitarSound.CleanElectric,
        GuitarSound.SteelString,
        GuitarSound.Nylon,
    ];

    [Fact]
    public void A_hammered_note_is_duller_and_slower_than_a_picked_one()
    {
        foreach (var sound in Plain)
        {
            var note = Plucks.Pluck(3, 7, 0.5);
            var picked = Plucks.Render(sound, 1.2, note).AsSpan((Plucks.Rate / 2) - 50);
            var hammered = Plucks
                .Render(sound, 1.2, note with { Action = StringAction.HammerOn })
                .AsSpan((Plucks.Rate / 2) - 50);

            Assert.True(Centroid(hammered) < 0.7 * Centroid(picked), $"{sound}");
            var (slow, quick) = (FirstRise(hammered), FirstRise(picked));
            Assert.True(slow > 1.5 * quick, $"{sound}: {1000 * slow:F2} against {1000 * quick:F2} ms");
        }
    }

    [Fact]
    public void A_slurred_note_enters_softer_than_a_picked_one()
    {
        foreach (var action in new[] { StringAction.HammerOn, StringAction.PullOff, StringAction.Slide })
        {
            var to = action is StringAction.PullOff ? 3 : 7;
            var second = Plucks.Pluck(3, to, 0.5);
            var first = Plucks.Pluck(3, 5, 0, 0.5);
            var picked = Plucks.Render(GuitarSound.CleanElectric, 1, first, second);
            var slurred = Plucks.Render(GuitarSound.CleanElectric, 1, first, second with { Action = action });
            const int After = (Plucks.Rate / 2) + 400;

            Assert.True(
                Tone.Rms(slurred.AsSpan(After, 8000)) < Tone.Rms(picked.AsSpan(After, 8000)),
                $"{action}"
            );
            Assert.True(Centroid(slurred.AsSpan(After)) < Centroid(picked.AsSpan(After)), $"{action}");
        }
    }

    [Fact]
    public void A_palm_mute_shortens_and_dulls()
    {
        foreach (var sound in Plain)
        {
            var open = Plucks.Render(sound, 1.2, Plucks.Pluck(6, 3));
            var muted = Plucks.Render(sound, 1.2, Plucks.Pluck(6, 3) with { PalmMuted = true });
            var hertz = Tone.Hertz(43);
            var part = new Range(Plucks.Rate / 20, Plucks.Rate * 3 / 10);

            var sixty = Tone.Sixty(muted.AsSpan()[part], Plucks.Rate, hertz);
            Assert.InRange(sixty, 0.15, 0.6);
            Assert.True(sixty < Tone.Sixty(open.AsSpan()[part], Plucks.Rate, hertz) / 4);
            Assert.True(Centroid(muted.AsSpan(2000)) < Centroid(open.AsSpan(2000)));
        }
    }

    [Fact]
    public void Dead_notes_and_rakes_are_short_and_a_rake_is_softer()
    {
        var dead = Plucks.Render(
            GuitarSound.CleanElectric,
            0.5,
            Plucks.Pluck(4, 7) with
            {
                Action = StringAction.Dead,
            }
        );
        var rake = Plucks.Render(
            GuitarSound.CleanElectric,
            0.5,
            Plucks.Pluck(4, 7) with
            {
                Action = StringAction.Rake,
            }
        );
        var note = Plucks.Render(GuitarSound.CleanElectric, 0.5, Plucks.Pluck(4, 7));

        Assert.True(Tone.Peak(dead.AsSpan(Plucks.Rate / 10)) < 0.02 * Tone.Peak(dead));
        Assert.True(Tone.Peak(dead) > 0.2 * Tone.Peak(note));
        Assert.True(Tone.Peak(rake) < 0.8 * Tone.Peak(dead));
    }

    [Fact]
    public void The_direction_of_the_stroke_changes_the_spectrum()
    {
        foreach (var sound in Plain)
        {
            var down = Plucks.Render(sound, 0.6, Plucks.Pluck(2, 5));
            var up = Plucks.Render(sound, 0.6, Plucks.Pluck(2, 5) with { Action = StringAction.Up });

            Assert.True(Centroid(up.AsSpan(200)) > 1.05 * Centroid(down.AsSpan(200)), $"{sound}");
            Assert.True(Distance(down, up, 659.26) > 1, $"{sound}");
        }
    }

    [Fact]
    public void Plectrum_finger_and_thumb_stand_in_that_order_of_brightness()
    {
        double[] centres =
        [
            .. new[] { StringAction.Down, StringAction.Finger, StringAction.Thumb }.Select(action =>
                Centroid(
                    Plucks
                        .Render(GuitarSound.Nylon, 0.6, Plucks.Pluck(4, 2) with { Action = action })
                        .AsSpan(200)
                )
            ),
        ];

        Assert.Equal(centres.OrderDescending(), centres);
    }

    [Fact]
    public void Harder_strokes_are_louder_and_brighter()
    {
        var soft = Plucks.Render(GuitarSound.SteelString, 0.6, Plucks.Pluck(3, 2) with { Strength = 0.3 });
        var hard = Plucks.Render(GuitarSound.SteelString, 0.6, Plucks.Pluck(3, 2) with { Strength = 1 });

        Assert.InRange(Tone.Decibels(Tone.Rms(hard) / Tone.Rms(soft)), 12, 22);
        Assert.True(Centroid(hard.AsSpan(200)) > 1.05 * Centroid(soft.AsSpan(200)));
    }

    [Fact]
    public void A_stroke_at_a_share_of_the_string_leaves_out_that_partial()
    {
        // Struck at a fifth of the string, the fifth partial has a node there (Fletcher and Rossing 1998, ch. 2).
        var note = Plucks.Pluck(5, 0) with
        {
            Position = 0.2,
            Action = StringAction.Down,
        };
        var samples = Plucks.Render(GuitarSound.SteelString, 0.7, note)[(Plucks.Rate / 5)..];
        double Level(int partial) =>
            Tone.Decibels(Tone.Partial(samples, Plucks.Rate, 110.0 * partial).Magnitude);

        Assert.True(Level(5) < Level(4) - 25);
        Assert.True(Level(5) < Level(6) - 25);
    }

    [Fact]
    public void Nearer_the_bridge_is_brighter()
    {
        var far = Plucks.Render(GuitarSound.SteelString, 0.6, Plucks.Pluck(4, 0) with { Position = 0.3 });
        var near = Plucks.Render(GuitarSound.SteelString, 0.6, Plucks.Pluck(4, 0) with { Position = 0.08 });

        Assert.True(Centroid(near.AsSpan(200)) > 1.1 * Centroid(far.AsSpan(200)));
    }

    private static double Centroid(ReadOnlySpan<float> samples) =>
        Spectrum.Centroid(samples[..8192], Plucks.Rate);

    // Seconds from a tenth to nine tenths of the highest of the first 4 ms: the first swing alone.
    private static double FirstRise(ReadOnlySpan<float> samples)
    {
        var start = samples[..(Plucks.Rate / 250)];
        var peak = Tone.Peak(start);
        var (low, high) = (0, 0);
        while (Math.Abs(start[low]) < 0.1 * peak)
        {
            low++;
        }

        while (Math.Abs(start[high]) < 0.9 * peak)
        {
            high++;
        }

        return (high - low) / (double)Plucks.Rate;
    }

    private static double Distance(ReadOnlySpan<float> one, ReadOnlySpan<float> other, double hertz)
    {
        var sum = 0.0;
        for (var partial = 2; partial <= 6; partial++)
        {
            var difference = Relative(one, hertz / 2, partial) - Relative(other, hertz / 2, partial);
            sum += difference * difference;
        }

        return Math.Sqrt(sum / 5);
    }

    private static double Relative(ReadOnlySpan<float> samples, double hertz, int partial) =>
        Tone.Decibels(
            Tone.Partial(samples.Slice(2000, 16_000), Plucks.Rate, hertz * partial).Magnitude
                / Tone.Partial(samples.Slice(2000, 16_000), Plucks.Rate, hertz).Magnitude
        );
}
