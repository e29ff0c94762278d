using CsCheck;
using Passagework.Exercises;
using Passagework.Rhythm;
using Passagework.Sound.Backing;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;
using Passagework.Tests.Sound.Performance;
using Passagework.Theory;

namespace Passagework.Tests.Sound.Backing;

public sealed class BandTests
{
    private static readonly string[] Progressions = ["Am7 | D7", "C6 | % | F#m7b5 B7b9", "Bb13 | Eb9"];

    [Theory]
    // Beats of the bar at which a sound is heard whatever the seed.
    [InlineData(Groove.Straight, BandSound.Kick, "0 2")]
    [InlineData(Groove.Straight, BandSound.Snare, "1 3")]
    [InlineData(Groove.Straight, BandSound.Hat, "0 0.5 1 1.5 2 2.5 3 3.5")]
    [InlineData(Groove.Shuffle, BandSound.Hat, "0 0.667 1 1.667 2 2.667 3 3.667")]
    [InlineData(Groove.Swung, BandSound.Ride, "0 1 1.667 2 3 3.667")]
    [InlineData(Groove.Swung, BandSound.Hat, "1 3")]
    [InlineData(Groove.Swung, BandSound.Bass, "0 1 2 3")]
    [InlineData(Groove.TwelveEight, BandSound.Hat, "0 0.333 0.667 1 1.333 1.667 2 2.333 2.667 3 3.333 3.667")]
    public void Each_groove_keeps_its_figure(Groove groove, BandSound sound, string expected)
    {
        var always = Enumerable
            .Range(1, 30)
            .Select(seed => Beats(Notes("4/4", "Am7", groove, (ulong)seed), sound).ToHashSet())
            .Aggregate((all, some) => [.. all.Intersect(some)]);

        Assert.Equal(
            expected,
            string.Join(' ', always.Order().Select(beat => FormattableString.Invariant($"{beat:0.###}")))
        );
    }

    [Theory]
    [InlineData("3/4", "0", "2")]
    [InlineData("5/4", "0 3", "2 4")]
    [InlineData("6/8", "0", "1")]
    [InlineData("7/8", "0 2 4", "1 3 6")]
    public void Other_metres_have_their_backbeat_at_the_end_of_a_group(
        string meter,
        string kicks,
        string snares
    )
    {
        var groove = Grooves.Usual(Rhythm.Beats.Meter(meter), default);
        var notes = Notes(meter, "Am7", groove, 1).Where(note => note.Strength > 0.8).ToList();

        Assert.Equal(kicks, string.Join(' ', Beats(notes, BandSound.Kick, meter)));
        Assert.Equal(snares, string.Join(' ', Beats(notes, BandSound.Snare, meter)));
    }

    [Fact]
    public void The_bass_begins_each_chord_on_its_root_and_leads_into_the_next()
    {
        foreach (var seed in Enumerable.Range(1, 20))
        {
            var bass = Notes("4/4", "Am7 | D7", Groove.Swung, (ulong)seed, times: 2)
                .Where(note => note.Sound == BandSound.Bass)
                .Select(note => note.Key)
                .ToList();

            Assert.Equal((9, 2), (bass[0] % 12, bass[4] % 12));
            Assert.Equal(1, Math.Abs(bass[4] - bass[3]));
        }
    }

    [Fact]
    public void Bass_and_chords_play_chord_tones_except_before_a_change() =>
        Gen.Select(Gen.Int[0, 2].Select(at => Progressions[at]), Gen.Enum<Groove>(), Gen.ULong)
            .Sample(
                (text, groove, seed) =>
                {
                    var chords = ChordProgression.Read(text).OrThrow();
                    foreach (var note in Notes("4/4", text, groove, seed, times: 3))
                    {
                        var chord = ChordAt(chords, note.Seconds + 1e-9);
                        var next = ChordAt(chords, note.Seconds + 0.5 + 1e-9);
                        Assert.InRange(note.Key, note.Sound < BandSound.Bass ? 0 : 28, 84);
                        Assert.True(
                            note.Key == 0
                                || chord.Contains(note.Key)
                                || (note.Sound == BandSound.Bass && next != chord),
                            $"{note} over {chord}"
                        );
                    }
                },
                iter: 60
            );

    [Fact]
    public void Chords_move_little_from_one_to_the_next()
    {
        var stabs = Notes("4/4", "Am7 | D7 | Gmaj7 | Cmaj7", Groove.Straight, 1, times: 4)
            .Where(note => note.Sound == BandSound.Stab)
            .GroupBy(note => note.Seconds)
            .Select(chord => chord.Select(note => note.Key).Order().ToList())
            .ToList();

        Assert.All(
            stabs.Zip(stabs.Skip(1)),
            pair =>
                Assert.All(
                    pair.Second,
                    key => Assert.InRange(pair.First.Min(old => Math.Abs(old - key)), 0, 2)
                )
        );
    }

    [Fact]
    public void The_same_seed_plays_the_same_and_another_differs()
    {
        var first = Notes("4/4", "Am7 | D7", Groove.Straight, 1, times: 4);

        Assert.Equal(first, Notes("4/4", "Am7 | D7", Groove.Straight, 1, times: 4));
        Assert.NotEqual(first, Notes("4/4", "Am7 | D7", Groove.Straight, 2, times: 4));
    }

    [Fact]
    public void The_band_waits_for_the_count_in()
    {
        var plan = Played.At() with { CountInBars = 1 };
        var times = Played.Perform(Played.Of("6:5/1D"), plan).Times;
        var band = new BandPlan(ChordProgression.Read("C").OrThrow(), Groove.Straight);

        Assert.Equal(2.1, Band.Notes(times, band)[0].Seconds, 1e-9);
    }

    [Fact]
    public void Swung_off_beats_follow_the_swing_of_the_line()
    {
        var times = Played.Perform(Played.Of("6:5/1D", Played.Swung("3/5", 2))).Times;
        var band = new BandPlan(ChordProgression.Read("C").OrThrow(), Groove.Swung);
        var ride = Band.Notes(times, band).Where(note => note.Sound == BandSound.Ride);

        Assert.Contains(ride, note => Math.Abs(note.Seconds - (0.1 + 0.5 + 0.3)) < 1e-9);
    }

    [Fact]
    public void Twos_over_beats_of_three_are_refused() =>
        Assert.Equal(
            "groove: the beats of 12/8 divide in three, not in two; 12/8 or shuffle",
            Grooves.Check(Groove.Straight, Rhythm.Beats.Meter("12/8"))?.ToString()
        );

    private static IReadOnlyList<BandNote> Notes(
        string meter,
        string chords,
        Groove groove,
        ulong seed,
        int times = 1
    )
    {
        var recipe = new Recipe { Rhythm = new RhythmPlan { Meter = Rhythm.Beats.Meter(meter) } };
        var performance = Played.Perform(Played.Of("6:5/1D", recipe), Played.At(120, times));
        return Band.Notes(
            performance.Times,
            new BandPlan(ChordProgression.Read(chords).OrThrow(), groove, seed)
        );
    }

    private static IEnumerable<double> Beats(
        IEnumerable<BandNote> notes,
        BandSound sound,
        string meter = "4/4"
    ) =>
        notes
            .Where(note => note.Sound == sound)
            .Select(note => Math.Round((note.Seconds - Played.Lead) * 2, 6))
            .Where(beat => beat < Rhythm.Beats.Meter(meter).BeatsPerBar)
            .Distinct();

    private static Chord ChordAt(ChordProgression chords, double seconds)
    {
        var beat = (int)((seconds - Played.Lead) * 2);
        var bar = chords.Bars[beat / 4 % chords.Bars.Length];
        return bar[beat % 4 * bar.Length / 4];
    }
}
