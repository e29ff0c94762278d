using System.Collections.Immutable;
using CsCheck;
using Passagework.Instrument;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>Any stretch rendered on its own fits into the whole.</summary>
public sealed class ChunkTests
{
    private const int Length = 12 * Plucks.Rate;

    private static readonly ImmutableArray<StringEvent> Music = [.. Line()];

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Successive_calls_of_any_length_give_the_same_samples(GuitarSound sound)
    {
        var whole = Whole(sound);
        Gen.Int[1, 3000]
            .Array[40]
            .Sample(
                lengths =>
                {
                    var renderer = new GuitarRenderer(sound, Music, Plucks.Rate);
                    var at = 0;
                    foreach (var length in lengths)
                    {
                        var part = new float[length];
                        renderer.Render(part, at);
                        Assert.Equal(whole[at..(at + length)], part);
                        at += length;
                    }
                },
                iter: 4,
                threads: 1
            );
    }

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void A_jump_gives_what_the_whole_has_there(GuitarSound sound)
    {
        var whole = Whole(sound);
        var renderer = new GuitarRenderer(sound, Music, Plucks.Rate);
        Gen.Int[0, Length - 6000]
            .Sample(
                at =>
                {
                    var part = new float[6000];
                    renderer.Render(part, at);
                    var worst = 0f;
                    for (var i = 0; i < part.Length; i++)
                    {
                        worst = Math.Max(worst, Math.Abs(part[i] - whole[at + i]));
                    }

                    Assert.True(Tone.Decibels(worst) < -80, $"{Tone.Decibels(worst)} dB at {at}");
                },
                iter: 25,
                threads: 1
            );
    }

    [Fact]
    public void A_jump_into_a_chord_struck_long_before_finds_it_ringing()
    {
        ImmutableArray<StringEvent> chord =
        [
            .. Enumerable.Range(1, 6).Select(s => Plucks.Pluck(s, 2, 0.02 * s)),
        ];
        var whole = new float[8 * Plucks.Rate];
        new GuitarRenderer(GuitarSound.CleanElectric, chord, Plucks.Rate).Render(whole, 0);
        var part = new float[5000];
        new GuitarRenderer(GuitarSound.CleanElectric, chord, Plucks.Rate).Render(part, 7 * Plucks.Rate);

        Assert.True(Tone.Rms(part) > 0.002);
        Assert.Equal(whole[(7 * Plucks.Rate)..((7 * Plucks.Rate) + 5000)], part);
    }

    [Fact]
    public void The_same_events_and_seed_give_the_same_bytes_and_another_seed_other_noise()
    {
        var one = new float[20_000];
        var other = new float[20_000];
        new GuitarRenderer(GuitarSound.SteelString, Music, Plucks.Rate, 5).Render(one, 0);
        new GuitarRenderer(GuitarSound.SteelString, Music, Plucks.Rate, 5).Render(other, 0);
        Assert.Equal(one, other);

        new GuitarRenderer(GuitarSound.SteelString, Music, Plucks.Rate, 6).Render(other, 0);
        Assert.NotEqual(one, other);
    }

    [Fact]
    public void The_order_of_the_events_does_not_matter_on_the_strings()
    {
        var forth = Plucks.Render(GuitarSound.Nylon, 1, Plucks.Pluck(1, 0), Plucks.Pluck(1, 3, 0.4));
        var silent = new float[forth.Length];
        new GuitarRenderer(
            GuitarSound.Nylon,
            [Plucks.Pluck(1, 3, 0.4), Plucks.Pluck(1, 0)],
            Plucks.Rate
        ).Render(silent, 0);

        Assert.Equal(Tone.Rms(forth), Tone.Rms(silent), 1e-3);
    }

    [Fact]
    public void Samples_needed_reach_to_where_the_sound_has_fallen_by_eighty_decibels()
    {
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            ImmutableArray<StringEvent> events = [Plucks.Pluck(1, 12, 0.5), Plucks.Pluck(6, 0, 0, 0.7)];
            var renderer = new GuitarRenderer(sound, events, Plucks.Rate);
            var samples = new float[renderer.SamplesNeeded + 1000];
            renderer.Render(samples, 0);

            Assert.InRange(renderer.SamplesNeeded, Plucks.Rate, 31 * Plucks.Rate);
            var left = Tone.Decibels(Tone.Rms(samples.AsSpan()[^1000..]) / Tone.Peak(samples));
            Assert.True(left < (sound is GuitarSound.DrivenElectric ? -45 : -65), $"{sound}: {left} dB");
        }

        Assert.Equal(0, new GuitarRenderer(GuitarSound.Nylon, [], Plucks.Rate).SamplesNeeded);
    }

    [Fact]
    public void Events_that_cannot_be_rendered_are_refused()
    {
        var good = Plucks.Pluck(1, 0);
        StringEvent[] bad =
        [
            good with
            {
                String = 7,
            },
            good with
            {
                String = 0,
            },
            good with
            {
                Seconds = -1,
            },
            good with
            {
                Seconds = double.NaN,
            },
            good with
            {
                EndSeconds = double.NaN,
            },
            good with
            {
                Key = 101,
            },
            good with
            {
                Key = double.NaN,
            },
            good with
            {
                Strength = 1.1,
            },
            good with
            {
                Position = 0,
            },
            good with
            {
                Release = new RingOver(0),
            },
            good with
            {
                Vibrato = (0, 1),
            },
            good with
            {
                Bend = [(0.2, 0), (0.1, 1)],
            },
            good with
            {
                Bend = [(0.2, double.NaN)],
            },
        ];

        foreach (var note in bad)
        {
            var thrown = Assert.Throws<ArgumentOutOfRangeException>(() =>
                Plucks.Render(GuitarSound.Nylon, 0.1, note)
            );
            Assert.Contains("must be", thrown.Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => new GuitarRenderer(GuitarSound.Nylon, [good], 8000));
        Assert.True(Tuning.TryParse("bass", out var bass));
        _ = new GuitarRenderer(GuitarSound.Nylon, [good with { String = 4, Key = 28 }], 44_100, 1, bass);
    }

    private static float[] Whole(GuitarSound sound)
    {
        var whole = new float[Length];
        new GuitarRenderer(sound, Music, Plucks.Rate).Render(whole, 0);
        return whole;
    }

    private static IEnumerable<StringEvent> Line()
    {
        for (var i = 0; i < 80; i++)
        {
            var at = i * 0.13;
            var action = (i % 5) switch
            {
                0 => StringAction.Down,
                1 => StringAction.HammerOn,
                2 => StringAction.Up,
                3 => StringAction.Slide,
                _ => StringAction.Finger,
            };
            yield return Plucks.Pluck(6 - (i / 2 % 6), 5 + (i % 4), at, at + 0.13 + (i % 3 * 0.2)) with
            {
                Action = action,
                Vibrato = i % 7 == 0 ? (5, 0.3) : null,
                PalmMuted = i % 11 == 0,
                Release = i % 2 == 0 ? RingOver.Roll : null,
            };
        }
    }
}
