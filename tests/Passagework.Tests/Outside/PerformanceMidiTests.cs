using NAudio.Midi;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;
using Passagework.Tests.Sound.Performance;
using Passagework.Tests.Sound.Takes;
using Passagework.Theory;

namespace Passagework.Tests.Outside;

/// <summary>
/// A performance as MIDI holds what its sound holds, read by an independent library (NuGet package "NAudio.Midi", strict)
/// and turned back into seconds here, tempo by tempo.
/// </summary>
public sealed class PerformanceMidiTests
{
    private static readonly SoundPlan Everything = new()
    {
        Guitar = GuitarSound.Nylon,
        Click = new ClickPlan { Pattern = ClickPattern.BeatsAndGroups },
        Backing = new BandPlan(ChordProgression.Read("Am7 | D7").OrThrow(), Groove.Shuffle),
        Drone = NoteName.TryParse("A", out var root) ? root : default,
    };

    [Fact]
    public void Brushes_rakes_and_every_other_event_of_the_guitar_are_in_it()
    {
        var brush = Played.Perform(Played.Chord(Stroke.Down, "1:5", "2:5", "3:5", "4:7"));
        var rake = Raked();

        Assert.Equal(4, brush.Events.Select(e => e.Seconds).Distinct().Count());
        Assert.True(rake.Events.Count(e => e.Action == StringAction.Rake) == 7);
        Assert.All(
            new[] { brush, rake },
            performance =>
                AssertSame(
                    performance.Events.Select(e => ((int)e.Key, e.Seconds - Played.Lead, e.Strength)),
                    Notes(performance, new SoundPlan(), "Guitar")
                )
        );
    }

    [Fact]
    public void Muted_strings_of_a_rake_are_short_and_softer_than_their_note()
    {
        var performance = Raked();
        var muted = performance.Events.Index().Where(e => e.Item.Action == StringAction.Rake).ToList();
        var heard = Notes(performance, new SoundPlan(), "Guitar");

        Assert.All(
            muted,
            e =>
            {
                var note = heard[e.Index];
                Assert.InRange(note.EndSeconds - note.Seconds, 0.001, 0.05);
                Assert.InRange(note.Velocity, 1, 70);
            }
        );
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    public void Click_drums_bass_and_chords_fall_where_they_sound(int times, int countIn)
    {
        var performance = Performed(times, countIn);
        var lead = performance.Times.BarSeconds(0);
        var band = Band.Notes(performance.Times, Everything.Backing!);
        var drums = band.Where(note => note.Sound is not (BandSound.Bass or BandSound.Stab)).ToList();
        var clicks = ClickTrack.Strokes(performance, Everything.Click!);

        AssertTimes(clicks.Select(c => c.Seconds - lead), Notes(performance, Everything, "Click"));
        AssertTimes(drums.Select(d => d.Seconds - lead), Notes(performance, Everything, "Drums"));
        AssertSame(Of(BandSound.Bass), Notes(performance, Everything, "Bass"));
        AssertSame(Of(BandSound.Stab), Notes(performance, Everything, "Chords"));

        IEnumerable<(int, double, double)> Of(BandSound sound) =>
            band.Where(note => note.Sound == sound)
                .Select(note => (note.Key, note.Seconds - lead, note.Strength));
    }

    [Fact]
    public void Parts_have_the_channels_programs_and_keys_of_general_midi()
    {
        var performance = Performed(1, 0);
        var file = File(performance, Everything);
        var programs = file
            .Events.SelectMany(e => e)
            .OfType<PatchChangeEvent>()
            .Select(e => (e.Channel, e.Patch + 1));

        Assert.Equal([(1, 25), (2, 33), (3, 5), (4, 21)], programs.Order());
        Assert.Equal(
            [10],
            file.Events[2].Concat(file.Events[3]).OfType<NoteEvent>().Select(e => e.Channel).Distinct()
        );
        Assert.Equal(
            [75, 76, 77],
            Notes(performance, Everything, "Click").Select(n => n.Key).Distinct().Order()
        );
        Assert.Equal(
            [36, 38, 42],
            Notes(performance, Everything, "Drums").Select(n => n.Key).Distinct().Order()
        );
        Assert.Equal([45, 52], Notes(performance, Everything, "Drone").Select(n => n.Key).Order());
    }

    [Fact]
    public void A_count_in_is_clicked_and_nobody_plays_where_the_guitar_is_left_out()
    {
        var performance = Performed(1, 1);
        var alone = new SoundPlan { Guitar = null };

        Assert.Equal(4, Notes(performance, alone, "Click").Count);
        Assert.Equal(2, File(performance, alone).Tracks);
        var nothing = PerformanceMidi.Write(Performed(1, 0), alone);
        Assert.False(nothing.TryGet(out _, out var fault));
        Assert.Equal("nothing is left to be heard", fault.What);
    }

    // Every second note with a rake over two or three strings into it.
    private static TimedPerformance Raked()
    {
        var plain = Played.Of("6:5/1D 3:5/1D 6:5/1D 3:7/3D 6:8/4D 2:5/1D");
        var raked = plain.Notes.Select((note, i) => i % 2 == 1 ? note with { RakedFrom = 5 } : note);
        return Played.Perform(plain with { Notes = [.. raked] });
    }

    private static TimedPerformance Performed(int times, int countIn)
    {
        var recipe = Library.Find("groups-of-five-up-and-down").OrThrow().Recipe;
        var swung = recipe with
        {
            Rhythm = recipe.Rhythm with { NotesPerBeat = 2, Swing = Beats.Swing("2/3") },
        };
        var plan = new PerformancePlan
        {
            Tempo = TempoPlan.Gradual(Beats.Tempo(90), Beats.Tempo(150), times).OrThrow(),
            CountInBars = countIn,
        };
        return Performer.Perform(Taken.Of(swung), plan).OrThrow();
    }

    private static MidiFile File(TimedPerformance performance, SoundPlan plan)
    {
        using var stream = new MemoryStream(PerformanceMidi.Write(performance, plan).OrThrow());
        return new MidiFile(stream, strictChecking: true);
    }

    private static List<(int Key, double Seconds, double EndSeconds, int Velocity)> Notes(
        TimedPerformance performance,
        SoundPlan plan,
        string track
    )
    {
        var file = File(performance, plan);
        var tempi = file.Events[0].OfType<TempoEvent>().ToList();
        var events = file.Events.Single(e => e.OfType<TextEvent>().Any(text => text.Text == track));
        return
        [
            .. events
                .OfType<NoteOnEvent>()
                .Where(note => note.Velocity > 0)
                .Select(note =>
                    (
                        note.NoteNumber,
                        At(note.AbsoluteTime),
                        At(note.AbsoluteTime + note.NoteLength),
                        note.Velocity
                    )
                ),
        ];

        double At(long tick)
        {
            var seconds = 0.0;
            foreach (var (i, tempo) in tempi.Index().Where(t => t.Item.AbsoluteTime < tick))
            {
                var end = i + 1 < tempi.Count ? Math.Min(tick, tempi[i + 1].AbsoluteTime) : tick;
                seconds +=
                    (end - tempo.AbsoluteTime)
                    * tempo.MicrosecondsPerQuarterNote
                    / 1e6
                    / file.DeltaTicksPerQuarterNote;
            }

            return seconds;
        }
    }

    // A tick is 1.4 ms at most (480 a quarter at 90); what lies before the first bar line falls on it.
    private static void AssertSame(
        IEnumerable<(int Key, double Seconds, double Strength)> expected,
        List<(int Key, double Seconds, double EndSeconds, int Velocity)> heard
    )
    {
        var wanted = expected.OrderBy(e => Math.Max(0, e.Seconds)).ThenBy(e => e.Key).ToList();
        var found = heard.OrderBy(n => n.Seconds).ThenBy(n => n.Key).ToList();

        Assert.Equal(wanted.Select(e => e.Key).Order(), found.Select(n => n.Key).Order());
        foreach (var (e, n) in wanted.Zip(found))
        {
            Assert.Equal(Math.Max(0, e.Seconds), n.Seconds, 0.001);
            Assert.Contains(
                found,
                f =>
                    f.Key == e.Key
                    && Math.Abs(f.Seconds - Math.Max(0, e.Seconds)) < 0.001
                    && f.Velocity == (int)Math.Round(127 * e.Strength)
            );
        }
    }

    private static void AssertTimes(
        IEnumerable<double> expected,
        List<(int Key, double Seconds, double EndSeconds, int Velocity)> heard
    )
    {
        var wanted = expected.Order().ToList();

        Assert.Equal(wanted.Count, heard.Count);
        Assert.All(
            wanted.Zip(heard.Select(n => n.Seconds).Order()),
            p => Assert.Equal(p.First, p.Second, 0.001)
        );
    }
}
