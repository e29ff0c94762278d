using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>Strings stop where the events say so, without a click, and ring into each other only as far as asked.</summary>
public sealed class ReleaseTests
{
    private const int End = Plucks.Rate / 2;

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    public void Nothing_changes_before_the_end_and_something_right_after(GuitarSound sound)
    {
        var ringing = Plucks.Render(sound, 0.7, Plucks.Pluck(4, 5));
        var lifted = Plucks.Render(sound, 0.7, Plucks.Pluck(4, 5, 0, 0.5));

        Assert.Equal(ringing[..End], lifted[..End]);
        Assert.NotEqual(ringing[End..(End + 100)], lifted[End..(End + 100)]);
    }

    [Theory]
    [InlineData(0.055)]
    [InlineData(0.16)]
    [InlineData(0.6)]
    public void The_ring_over_falls_by_sixty_decibels_in_its_time(double seconds)
    {
        var note = Plucks.Pluck(3, 5, 0, 0.5) with { Release = new RingOver(seconds) };
        var samples = Plucks.Render(GuitarSound.CleanElectric, 2, note);
        var level = Tone.Rms(samples.AsSpan(End - 2000, 2000));
        var at = End + (int)(seconds * Plucks.Rate);

        // A string of its own fades a little too, and the flesh takes high partials first: at or below, never above.
        var half = Tone.Decibels(
            Tone.Rms(samples.AsSpan(at - (int)(seconds * Plucks.Rate / 2), 400)) / level
        );
        Assert.InRange(half, -45, -27);
        Assert.True(Tone.Decibels(Tone.Rms(samples.AsSpan(at, 400)) / level) < -57);
        Assert.True(Tone.Decibels(Tone.Rms(samples.AsSpan(at - 600, 400)) / level) > -80);
    }

    [Fact]
    public void A_rolled_note_sounds_into_the_next_one_and_a_lifted_one_hardly()
    {
        double Left(RingOver release)
        {
            var old = Plucks.Pluck(3, 5, 0, 0.5) with { Release = release };
            var samples = Plucks.Render(GuitarSound.CleanElectric, 1, old);
            return Tone.Rms(samples.AsSpan(End + 1500, 1000));
        }

        Assert.True(Left(RingOver.Roll) > 5 * Left(RingOver.Lift));
    }

    [Fact]
    public void An_event_without_end_rings_until_the_string_is_struck_again()
    {
        var first = Plucks.Pluck(5, 3);
        var again = Plucks.Pluck(5, 3, 0.5);
        var both = Plucks.Render(GuitarSound.CleanElectric, 1.4, first, again);
        var alone = Plucks.Render(GuitarSound.CleanElectric, 1.4, first with { Strength = 0 }, again);

        // The plectrum stills the string: from there on nothing of the old note is left, but for the pickup's memory.
        Assert.Equal(
            Plucks.Render(GuitarSound.CleanElectric, 1.4, first)[..(End - 300)],
            both[..(End - 300)]
        );
        var difference = both.Zip(alone, (a, b) => a - b).Skip(End + 5000).Max(Math.Abs);
        Assert.InRange(difference, 0, 1e-4);
    }

    [Fact]
    public void Silence_after_the_last_note_is_nothing_at_all()
    {
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            var samples = Plucks.Render(sound, 4, Plucks.Pluck(6, 0, 0, 0.3));

            Assert.Equal(-1, samples.AsSpan(3 * Plucks.Rate).IndexOfAnyExcept(0f));
        }
    }

    [Fact]
    public void A_low_string_does_not_fall_asleep_between_its_pulses()
    {
        // At this rate a block is a tenth of the period, and what the pickup hears rests for longer than that.
        const int Fine = 192_000;
        var note = Plucks.Pluck(6, 0) with { Action = StringAction.Thumb, Strength = 0.06 };
        var samples = new float[2 * Fine];
        new GuitarRenderer(GuitarSound.CleanElectric, [note], Fine).Render(samples, 0);

        Assert.True(Tone.Rms(samples.AsSpan(3 * Fine / 2)) > 0.1 * Tone.Rms(samples.AsSpan(0, Fine / 2)));
    }

    [Fact]
    public void No_sample_is_too_small_for_the_processor()
    {
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            var samples = Plucks.Render(
                sound,
                6,
                Plucks.Pluck(1, 20, 0, 0.3),
                Plucks.Pluck(1, 22, 1) with
                {
                    PalmMuted = true,
                }
            );

            Assert.DoesNotContain(samples, float.IsSubnormal);
        }
    }

    [Fact]
    public void There_is_no_direct_current()
    {
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            // 110 Hz: a second holds whole periods.
            var samples = Plucks.Render(sound, 2, Plucks.Pluck(5, 0)).AsSpan(Plucks.Rate / 2, Plucks.Rate);
            var mean = 0.0;
            foreach (var sample in samples)
            {
                mean += sample / Plucks.Rate;
            }

            Assert.InRange(Math.Abs(mean) / Tone.Rms(samples), 0, 0.002);
        }
    }

    [Fact]
    public void Releases_and_new_strokes_make_no_step_above_the_sound_s_own()
    {
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            var thumb = Plucks.Pluck(6, 3, 0.02) with { Action = StringAction.Thumb };
            var again = thumb with { Seconds = 0.52, EndSeconds = 0.9 };
            var samples = Plucks.Render(sound, 1.2, thumb, again);

            // The old note alone, by taking away the new one: its steps while the plectrum comes to rest on it.
            var alone = Plucks.Render(sound, 1.2, thumb with { Strength = 0 }, again);
            float[] old = [.. samples.Zip(alone, (a, b) => a - b)];
            var own = Steepest(samples.AsSpan(2000, 20_000));
            if (sound is not GuitarSound.DrivenElectric)
            {
                Assert.True(Steepest(old.AsSpan((int)(0.51 * Plucks.Rate), 1000)) <= own, $"{sound} choke");
            }

            Assert.True(
                Steepest(samples.AsSpan((int)(0.899 * Plucks.Rate), 6000)) <= own,
                $"{sound} release"
            );
        }
    }

    [Fact]
    public void A_free_string_sounds_along_with_its_octave_and_not_with_a_strange_note()
    {
        double Answer(int fret)
        {
            var free = Plucks.Pluck(1, 0) with { Strength = 0 };
            var played = Plucks.Pluck(6, fret, 0.05, 0.8);
            var with = Plucks.Render(GuitarSound.Nylon, 1.4, free, played);
            var without = Plucks.Render(GuitarSound.Nylon, 1.4, played);
            Assert.NotEqual(without, with);
            return Tone.Partial(with.AsSpan(Plucks.Rate, Plucks.Rate / 4), Plucks.Rate, 329.63).Magnitude;
        }

        Assert.True(Answer(12) > 10 * Answer(13));
        Assert.InRange(Tone.Decibels(Answer(12) / 0.1), -75, -25);
    }

    private static float Steepest(ReadOnlySpan<float> samples)
    {
        var most = 0f;
        for (var i = 1; i < samples.Length; i++)
        {
            most = Math.Max(most, Math.Abs(samples[i] - samples[i - 1]));
        }

        return most;
    }
}
