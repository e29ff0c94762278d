using Passagework.Sound;
using Passagework.Sound.Takes;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound.Takes;

/// <summary>Planned faults found again in the samples, by sums that know nothing of how they were made.</summary>
public sealed class TakeSoundTests
{
    private const string Groups = "groups-of-five-up-and-down";
    private static readonly TakePlan Plain = new() { AskedBpm = 90 };

    [Fact]
    public void A_missed_note_leaves_silence()
    {
        var take = Taken.Make(Taken.Demo("missed-notes"));
        var missed = take.Truth.Where(n => n.Kind == TruthKind.Missed).Select(n => n.PlannedSeconds).ToList();
        var played = take.Truth.Where(n => n.Kind == TruthKind.Played).Select(n => n.PlannedSeconds);
        var loudness = played.Min(s => Tone.Rms(Taken.Between(take, s + 0.06, s + 0.12)));

        Assert.Equal(4, missed.Count);
        Assert.All(
            missed,
            s =>
                Assert.InRange(
                    Tone.Decibels(Tone.Rms(Taken.Between(take, s + 0.06, s + 0.12)) / loudness),
                    -300,
                    -25
                )
        );
    }

    [Fact]
    public void A_ringing_string_sounds_on_at_its_own_pitch()
    {
        var dry = Taken.Make(Groups, Plain);
        var wet = Taken.Make(Groups, Plain with { RingingShare = 1, RingLeastMs = 140 });
        var judged = 0;
        foreach (var (i, note) in wet.Truth.Index().SkipLast(1))
        {
            var next = wet.Truth[i + 1];
            // Where the two fundamentals are four semitones or more apart, 80 ms tell them apart.
            if (note.Sound!.RingSeconds < 0.139 || Math.Abs(next.Sound!.Midi - note.Sound.Midi) < 4)
            {
                continue;
            }

            judged++;
            var (from, hertz) = (next.PlannedSeconds + 0.05, Tone.Hertz(note.Sound.Midi));
            var ringing = Tone.Partial(Taken.Between(wet, from, from + 0.08), Plucks.Rate, hertz).Magnitude;
            var damped = Tone.Partial(Taken.Between(dry, from, from + 0.08), Plucks.Rate, hertz).Magnitude;
            Assert.InRange(Tone.Decibels(ringing / damped), 8, 200);
        }

        Assert.InRange(judged, 6, 60);
    }

    [Fact]
    public void A_take_is_as_much_quieter_as_planned()
    {
        var (usual, quiet) = (Taken.Make(Groups, Plain), Taken.Make(Groups, Plain with { LevelDb = -36 }));

        Assert.Equal(-36, Tone.Decibels(Tone.Rms(quiet.Samples) / Tone.Rms(usual.Samples)), 0.01);
        Assert.Equal(-36, quiet.Level.ActiveDbfs - usual.Level.ActiveDbfs, 0.01);
    }

    [Fact]
    public void An_overload_clips_in_runs_at_full_scale()
    {
        var loud = Taken.Make(Groups, Plain with { OverloadDb = 9.54 });
        var free = Taken.Make(Groups, Plain with { OverloadDb = 0 });
        var cut = loud.Samples.Count(x => Math.Abs(x) >= 1) / (double)loud.Samples.Length;

        Assert.Equal(loud.Level.ClippedShare, cut, 1e-5);
        Assert.InRange(cut, 0.002, 0.2);
        Assert.Equal(
            free.Samples.Count(x => Math.Abs(3 * x) >= 1.002) / (double)free.Samples.Length,
            cut,
            5e-4
        );
        Assert.Equal(1, Tone.Peak(free.Samples), 1e-5);
        var runs = loud.Samples.Zip(loud.Samples.Skip(1)).Zip(loud.Samples.Skip(2));
        Assert.Contains(
            runs,
            r => Math.Abs(r.First.First) >= 1 && r.First.First == r.First.Second && r.Second == r.First.First
        );
    }

    [Theory]
    [InlineData(40)]
    [InlineData(30)]
    [InlineData(20)]
    [InlineData(10)]
    public void Room_noise_lies_as_far_below_the_guitar_as_planned(double decibels)
    {
        var clean = Taken.Make(Groups, Plain);
        var noise = Taken.Difference(Taken.Make(Groups, Plain with { NoiseUnderDb = decibels }), clean);

        var guitar = Taken.RmsPlaying(clean, clean.Samples);
        Assert.Equal(decibels, Tone.Decibels(guitar / Tone.Rms(noise)), 1.0);
        // Darker than white: a pole at 800 Hz takes three quarters of the amplitude at 3 kHz.
        var magnitudes = Spectrum.Of(noise.AsSpan(0, 1 << 18));
        var (low, high) = (Band(magnitudes, 100, 300), Band(magnitudes, 2900, 3100));
        Assert.InRange(high / low, 0.2, 0.33);
    }

    [Fact]
    public void Hum_has_the_mains_and_its_multiples_at_its_level()
    {
        var clean = Taken.Make(Groups, Plain);
        var hum = Taken.Difference(Taken.Make(Groups, Plain with { HumUnderDb = 25 }), clean);

        Assert.Equal(25, Tone.Decibels(Taken.RmsPlaying(clean, clean.Samples) / Tone.Rms(hum)), 1.0);
        var first = Tone.Partial(hum.AsSpan(0, Plucks.Rate), Plucks.Rate, 50).Magnitude;
        Assert.Equal(
            first / 2,
            Tone.Partial(hum.AsSpan(0, Plucks.Rate), Plucks.Rate, 100).Magnitude,
            first / 100
        );
        Assert.Equal(0, Tone.Partial(hum.AsSpan(0, Plucks.Rate), Plucks.Rate, 75).Magnitude, first / 100);
    }

    [Fact]
    public void A_room_echoes_at_its_level_and_dies_away_in_its_time()
    {
        var clean = Taken.Make(Groups, Plain);
        var echo = Taken.Difference(
            Taken.Make(Groups, Plain with { RoomUnderDb = 10, RoomSeconds = 0.8 }),
            clean
        );
        var end = clean.Truth[^1].Sound!.EndSeconds + 0.08;
        var (early, late) = (RmsAt(end), RmsAt(end + 0.3));

        Assert.Equal(10, Tone.Decibels(Tone.Rms(clean.Samples) / Tone.Rms(echo)), 0.5);
        Assert.Equal(60 * 0.3 / 0.8, Tone.Decibels(early / late), 4.0);

        double RmsAt(double s) => Tone.Rms(echo.AsSpan((int)(s * Plucks.Rate), (int)(0.1 * Plucks.Rate)));
    }

    [Fact]
    public void A_click_keeps_the_asked_tempo_whatever_is_played()
    {
        var plan = Plain with { TempoRatio = 0.9, LatencyMs = 100 };
        var clean = Taken.Make(Groups, plan);
        var click = Taken.Difference(Taken.Make(Groups, plan with { ClickUnderDb = 24 }), clean);

        Assert.Equal(24, Tone.Decibels(Tone.Peak(clean.Samples) / Tone.Peak(click)), 0.1);
        for (var beat = 0; beat < 20; beat++)
        {
            var at = (int)Math.Round((0.9 + (beat * 60 / 90.0)) * Plucks.Rate);
            Assert.Equal(0, Tone.Peak(click.AsSpan(at - 4000, 3990)), 1e-6);
            Assert.InRange(Tone.Peak(click.AsSpan(at, 200)), 0.2 * Tone.Peak(click), 1);
        }
    }

    /// <summary>In proportion they would be 5.3 dB louder; the public sound bank FluidR3 makes it 10.5 (measured).</summary>
    [Fact]
    public void Louder_notes_of_the_plan_are_louder()
    {
        var (soft, loud) = (Level(60), Level(110));

        Assert.InRange(Tone.Decibels(loud / soft), 5.3, 10.5);

        static double Level(double velocity) =>
            Tone.Rms(Taken.Make(Groups, Plain with { MeanVelocity = velocity }).Samples);
    }

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Nothing_clips_unasked(GuitarSound sound)
    {
        var take = Taken.Make(Groups, Plain with { MeanVelocity = 127, RingingShare = 1 }, 1, sound);

        Assert.Equal(0, take.Level.ClippedShare);
        Assert.InRange(Tone.Peak(take.Samples), 0.1, 0.99);
    }

    private static double Band(double[] magnitudes, double low, double high)
    {
        var perBin = Plucks.Rate / (2.0 * (magnitudes.Length - 1));
        return magnitudes[(int)(low / perBin)..(int)(high / perBin)].Average();
    }
}
