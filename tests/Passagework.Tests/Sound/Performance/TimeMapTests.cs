using CsCheck;
using NAudio.Midi;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;

namespace Passagework.Tests.Sound.Performance;

public sealed class TimeMapTests
{
    // A bar and a quarter of sixteenths: two bars.
    private const string Twenty =
        "6:5/1D 6:8/4U 5:5/1D 5:7/3U 4:5/1D 4:7/3U 3:5/1D 3:7/3U 2:5/1D 2:8/4U "
        + "1:5/1D 1:8/4U 1:5/1D 2:8/4U 2:5/1D 3:7/3U 3:5/1D 4:7/3U 4:5/1D 5:7/3U";

    [Fact]
    public void Bars_follow_the_count_in_and_repeat()
    {
        var times = Played
            .Perform(Played.Of(Twenty), Played.At(120, times: 2) with { CountInBars = 1 })
            .Times;

        Assert.Equal((1, 5), (times.CountInBars, times.Bars));
        Assert.Equal(
            [0.1, 2.1, 4.1, 6.1, 8.1, 10.1],
            Enumerable.Range(0, 6).Select(bar => Math.Round(times.BarSeconds(bar), 9))
        );
        Assert.Equal([2.1, 6.1], times.Notes.Where(note => note.Note == 0).Select(note => note.OnsetSeconds));
    }

    [Fact]
    public void A_loop_plays_only_its_bars_and_cuts_what_hangs_over()
    {
        var plan = Played.At(120, times: 3) with { Bars = new BarRange(1, 1) };
        var times = Played.Perform(Played.Of(Twenty), plan).Times;

        Assert.Equal([16, 17, 18, 19, 16, 17, 18, 19, 16, 17, 18, 19], times.Notes.Select(note => note.Note));
        Assert.Equal(
            [0.1, 2.1, 4.1],
            times.Notes.Where(note => note.Note == 16).Select(note => note.OnsetSeconds)
        );
    }

    [Theory]
    [InlineData(2, 1, "bars: no bars 3 to 3; bars within 1 to 2")]
    [InlineData(0, 3, "bars: no bars 1 to 3; bars within 1 to 2")]
    [InlineData(-1, 1, "bars: no bars 0 to 0; bars within 1 to 2")]
    [InlineData(1, int.MaxValue, "bars: no bars 2 to 2147483648; bars within 1 to 2")]
    public void Bars_that_are_not_there_are_refused(int first, int count, string expected)
    {
        var plan = Played.At() with { Bars = new BarRange(first, count) };

        Assert.Equal(expected, Refused(Played.Of(Twenty), plan));
    }

    [Fact]
    public void Music_of_more_than_an_hour_is_refused()
    {
        // Two bars at 10 beats a minute last 48 s.
        Assert.Equal(
            "the music lasts more than an hour; a faster tempo, fewer bars or fewer repeats",
            Refused(Played.Of(Twenty), Played.At(10, times: 76))
        );
        Assert.Equal(
            3600.0,
            Played.Perform(Played.Of(Twenty), Played.At(10, times: 74)).Times.EndSeconds,
            50.0
        );
    }

    [Fact]
    public void A_gradual_change_takes_the_time_of_its_law()
    {
        var plan = Played.At() with
        {
            Tempo = TempoPlan.Gradual(Beats.Tempo(60), Beats.Tempo(120)).OrThrow(),
        };
        var times = Played.Perform(Played.Of(Twenty), plan).Times;

        // Tempo linear in musical time over 8 beats: 60 · 8 · ln 2 / 60 s; the steps of a quarter beat cost under 1 ms.
        Assert.Equal(0.1 + (8 * Math.Log(2)), times.EndSeconds, 1e-3);
    }

    [Fact]
    public void Beats_come_back_from_seconds() =>
        Gen.Select(Gen.Double[20, 300], Gen.Double[20, 300], Gen.Int[0, 800])
            .Sample(
                (from, to, hundredths) =>
                {
                    var plan = Played.At() with
                    {
                        Tempo = TempoPlan.Gradual(Beats.Tempo(from), Beats.Tempo(to)).OrThrow(),
                    };
                    var times = Played.Perform(Played.Of(Twenty), plan).Times;
                    var seconds = times.SecondsAt(Fraction.Of(hundredths, 400));

                    Assert.Equal(hundredths / 100.0, times.BeatsAt(seconds), 1e-9);
                },
                iter: 100
            );

    [Theory]
    [InlineData(null, 0.0999)]
    [InlineData(0, 0.1001)]
    [InlineData(0, 0.2249)]
    [InlineData(1, 0.2251)]
    [InlineData(19, 99.0)]
    public void The_note_that_has_begun_last_is_found(int? expected, double seconds) =>
        Assert.Equal(expected, Played.Perform(Played.Of(Twenty)).Times.NoteAt(seconds));

    [Fact]
    public void Json_holds_passes_notes_and_bars()
    {
        var times = Played.Perform(Played.Of("6:5/1D 6:8/4U"), Played.At() with { CountInBars = 1 }).Times;

        Assert.Equal(
            """
            {"meter":"4/4","countInBars":1,
            "passes":[{"bar":1,"bars":1,"lineBar":0,"fromBpm":120,"toBpm":120}],
            "notes":[{"index":0,"pass":0,"onsetS":2.1,"endS":2.225},{"index":1,"pass":0,"onsetS":2.225,"endS":2.35}],
            "bars":[{"startS":0.1,"beatsS":[0.1,0.6,1.1,1.6]},{"startS":2.1,"beatsS":[2.1,2.6,3.1,3.6]}],
            "endS":4.1}
            """.Replace("\n", "", StringComparison.Ordinal),
            TimeMapJson.Of(times).ToJsonString()
        );
    }

    [Theory]
    [InlineData("1/2", 4)]
    [InlineData("2/3", 2)]
    [InlineData("3/5", 4)]
    public void Midi_of_the_same_performance_has_the_same_times(string swing, int notesPerBeat)
    {
        var plan = Played.At() with
        {
            Tempo = TempoPlan.Gradual(Beats.Tempo(70), Beats.Tempo(140), 3).OrThrow(),
            CountInBars = 1,
        };
        var performance = Played.Perform(Played.Of(Twenty, Played.Swung(swing, notesPerBeat)), plan);
        var bytes = Midi.Write(performance.Line, new MidiWriting { Tempi = performance.Tempi });

        using var stream = new MemoryStream(bytes);
        var file = new MidiFile(stream, strictChecking: true);
        var heard = file.Events[1].OfType<NoteOnEvent>().Where(note => note.Velocity > 0).ToList();
        var tempi = file.Events[0].OfType<TempoEvent>().ToList();

        // MIDI has whole microseconds a quarter note: up to 36 quarters of half a microsecond.
        Assert.Equal(60, heard.Count);
        Assert.All(
            heard.Zip(performance.Times.Notes),
            pair =>
                Assert.Equal(pair.Second.OnsetSeconds - Played.Lead, Seconds(pair.First.AbsoluteTime), 3e-5)
        );

        double Seconds(long tick) =>
            tempi
                .Select(
                    (tempo, at) => (tempo, Next: at + 1 < tempi.Count ? tempi[at + 1].AbsoluteTime : tick)
                )
                .Where(step => step.tempo.AbsoluteTime < tick)
                .Sum(step =>
                    (Math.Min(step.Next, tick) - step.tempo.AbsoluteTime)
                    * step.tempo.MicrosecondsPerQuarterNote
                    / 1e6
                    / file.DeltaTicksPerQuarterNote
                );
    }

    private static string Refused(Realization played, PerformancePlan plan) =>
        Assert.IsType<Outcome<TimedPerformance>.Refused>(Performer.Perform(played, plan)).Fault.ToString();
}
