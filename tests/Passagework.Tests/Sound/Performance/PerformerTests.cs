using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;

namespace Passagework.Tests.Sound.Performance;

public sealed class PerformerTests
{
    [Fact]
    public void Notes_begin_on_the_beat_and_last_as_written()
    {
        var performance = Played.Perform(Played.Of("6:5/1D 6:8/4U 5:5/1D"));

        Assert.Equal([0.1, 0.225, 0.35], performance.Events.Select(e => Math.Round(e.Seconds, 9)));
        Assert.Equal([45.0, 48, 50], performance.Events.Select(e => e.Key));
        Assert.Equal([0, 1, 2], performance.Events.Select(e => e.Note));
    }

    [Fact]
    public void Swing_delays_the_second_of_a_pair()
    {
        var performance = Played.Perform(Played.Of("6:5/1D 6:8/4U 5:5/1D", Played.Swung("2/3", 2)));

        // Eighths at 120: pairs of half a second, the second note at two thirds.
        Assert.Equal([0.1, 0.433333, 0.6], performance.Events.Select(e => Math.Round(e.Seconds, 6)));
    }

    [Fact]
    public void Strokes_and_slurs_sound_as_they_are_played()
    {
        var performance = Played.Perform(
            Played.Of("3:5/1D 3:7/3- 3:5/1- 3:7/1- 2:5/1U 2:6/2P 2:8/4I 1:5/1M 1:8/4A")
        );

        Assert.Equal(
            [
                StringAction.Down,
                StringAction.HammerOn,
                StringAction.PullOff,
                // The same finger can't come down on itself.
                StringAction.Slide,
                StringAction.Up,
                StringAction.Thumb,
                StringAction.Finger,
                StringAction.Finger,
                StringAction.Finger,
            ],
            performance.Events.Select(e => e.Action)
        );
    }

    [Fact]
    public void A_slur_from_a_silent_string_is_a_hammer_on_and_at_the_beginning_a_stroke()
    {
        var performance = Played.Perform(Played.Of("3:5/1- 2:5/1D 3:7/3-"));

        Assert.Equal(
            [StringAction.Down, StringAction.Down, StringAction.HammerOn],
            performance.Events.Select(e => e.Action)
        );
    }

    [Fact]
    public void Group_starts_are_struck_harder()
    {
        var strengths = Played
            .Perform(
                Played.Of("6:5/1D 6:8/4U 5:5/1D | 5:7/3U 4:5/1D"),
                Played.At() with
                {
                    Accents = AccentMode.Groups,
                }
            )
            .Events.Select(e => Math.Round(e.Strength * 127));

        // 64 plain, 20 more for a group's start, 8 for its written accent: reference of AccentMap.
        Assert.Equal([92.0, 64, 64, 92, 64], strengths);
    }

    [Theory]
    [InlineData(Stroke.Down, "4:0.064 3:0.076 2:0.088 1:0.1")]
    [InlineData(Stroke.Up, "1:0.064 2:0.076 3:0.088 4:0.1")]
    [InlineData(Stroke.Index, "4:0.1 3:0.1 2:0.1 1:0.1")]
    public void A_plectrum_crosses_a_chord_before_the_beat(Stroke stroke, string expected)
    {
        var performance = Played.Perform(Played.Chord(stroke, "1:5", "2:5", "3:5", "4:7"));

        Assert.Equal(
            expected,
            string.Join(' ', performance.Events.Select(e => $"{e.String}:{Math.Round(e.Seconds - 2, 4)}"))
        );
    }

    [Fact]
    public void A_rake_drags_over_muted_strings_into_its_note()
    {
        var plain = Played.Of("6:5/1D 6:8/4U 5:5/1D 2:8/4D");
        var raked = plain with { Notes = plain.Notes.SetItem(3, plain.Notes[3] with { RakedFrom = 4 }) };

        var events = Played.Perform(raked).Events.Where(e => e.Note == 3).ToList();

        // A quarter of the sixteenth before the note is more than twice 12 ms.
        Assert.Equal(
            ["4 Rake 50 0.451", "3 Rake 55 0.463", "2 Down 67 0.475"],
            events.Select(e => $"{e.String} {e.Action} {e.Key} {Math.Round(e.Seconds, 6)}")
        );
    }

    [Fact]
    public void A_brush_finds_room_in_a_quarter_of_the_time_before_it()
    {
        var fast = Played.At(1000);
        var events = Played.Perform(Played.Of("1:5/1D 1:5/1U"), fast).Events;
        var chord = Played.Chord(Stroke.Down, "1:5", "6:5");

        Assert.Equal(0.015, events[1].Seconds - events[0].Seconds, 1e-9);
        Assert.Equal(0.06, Spread(Played.Perform(chord, fast)), 1e-9);
        Assert.Equal(0.025, Spread(Played.Perform(AtOnce(chord), fast)), 1e-9);
    }

    [Fact]
    public void A_place_that_the_instrument_has_not_is_refused()
    {
        var played = Played.Of("6:5/1D 6:8/4U");
        var high = played.Notes[1] with { Place = Passagework.Instrument.Place.At(6, 30) };

        var refused = Performer.Perform(played with { Notes = played.Notes.SetItem(1, high) }, Played.At());

        Assert.Equal(
            "note 2: the instrument has no key 48 at 6:30; a place that it has",
            Assert.IsType<Outcome<TimedPerformance>.Refused>(refused).Fault.ToString()
        );
    }

    private static double Spread(TimedPerformance chord) =>
        chord.Events[^1].Seconds - chord.Events[0].Seconds;

    private static Realization AtOnce(Realization chord)
    {
        var note = chord.Notes[0].Note with { Onset = Fraction.Zero };
        return new Realization(chord.Line with { Notes = [note] }, [chord.Notes[0] with { Note = note }]);
    }
}
