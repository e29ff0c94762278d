using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Sound;
using Passagework.Sound.Performance;

namespace Passagework.Tests.Sound.Performance;

/// <summary>Sixteenths of 0.125 s from 0.1 s on: the second note begins at 0.225 s.</summary>
public sealed class FingerReleaseTests
{
    [Theory]
    // Another finger on another string: for its written length.
    [InlineData(0.225, "6:5/1D 5:7/3U 5:5/1D")]
    // The same string: up to the next note.
    [InlineData(0.225, "6:5/1D 6:8/4U 5:5/1D")]
    // A slur takes the string over.
    [InlineData(0.225, "6:5/1D 6:8/4- 5:5/1D")]
    // The finger is needed elsewhere and has to fly: 25 ms before.
    [InlineData(0.2, "6:5/1D 5:6/1U 5:5/1D")]
    // On the same string too.
    [InlineData(0.2, "6:5/1D 6:7/1U 5:5/1D")]
    public void A_fretted_note_ends_by_lifting(double end, string notes)
    {
        var first = Played.Perform(Played.Of(notes)).Events[0];

        Assert.Equal(end, first.EndSeconds, 1e-9);
        Assert.Equal(RingOver.Lift, first.Release);
    }

    [Fact]
    public void A_flight_takes_at_most_a_quarter_of_the_note()
    {
        var first = Played.Perform(Played.Of("6:5/1D 5:6/1U"), Played.At(300)).Events[0];

        // A sixteenth at 300 lasts 0.05 s.
        Assert.Equal(0.1 + (0.75 * 0.05), first.EndSeconds, 1e-9);
    }

    [Fact]
    public void A_rolled_note_fades_from_the_moment_of_the_next()
    {
        var first = Played.Perform(Played.Of("4:5/1D 3:5/1D 2:5/1D")).Events[0];

        Assert.Equal(0.225, first.EndSeconds, 1e-9);
        Assert.Equal(RingOver.Roll, first.Release);
    }

    [Fact]
    public void An_open_string_rings_until_it_is_struck_again()
    {
        var events = Played.Perform(Played.Of("6:0/0D 5:2/2U 5:3/3D 6:0/0U")).Events;

        Assert.Equal(0.1 + (3 * 0.125), events[0].EndSeconds, 1e-9);
        Assert.Equal(0.1 + (4 * 0.125), events[3].EndSeconds, 1e-9);
    }

    [Fact]
    public void An_open_string_is_damped_where_the_line_falls_silent()
    {
        var played = Played.Of("6:0/0D 5:2/2U 4:2/2D");
        var late = played.Notes[2].Note with { Onset = Fraction.Of(1, 2) };
        var rested = new Realization(
            played.Line with
            {
                Notes = played.Line.Notes.SetItem(2, late),
                End = late.End,
            },
            played.Notes.SetItem(2, played.Notes[2] with { Note = late })
        );

        Assert.Equal(0.1 + (2 * 0.125), Played.Perform(rested).Events[0].EndSeconds, 1e-9);
    }

    [Fact]
    public void Staccato_halves_notes_that_are_not_slurred_from()
    {
        var plan = Played.At() with { Manner = PlayingManner.Staccato };
        var events = Played.Perform(Played.Of("6:5/1D 6:8/4- 5:5/1D"), plan).Events;

        Assert.Equal(0.225, events[0].EndSeconds, 1e-9);
        Assert.Equal(0.225 + 0.0625, events[1].EndSeconds, 1e-9);
    }

    [Theory]
    // Nothing needs the string, its finger or the hand any more.
    [InlineData(double.PositiveInfinity, "6:5/1D 5:7/3U 4:7/3D")]
    // The finger goes to another fret two notes later.
    [InlineData(0.35 - 0.025, "6:5/1D 5:7/3U 4:6/1D")]
    // It lies across: the same fret of another string leaves the first one sounding.
    [InlineData(double.PositiveInfinity, "6:5/1D 5:5/1U 4:7/3D")]
    // The string is struck again.
    [InlineData(0.35, "6:5/1D 5:7/3U 6:8/4D")]
    public void Let_ring_holds_as_long_as_the_fingering_allows(double end, string notes)
    {
        var plan = Played.At() with { Manner = PlayingManner.LetRing };

        Assert.Equal(end, Played.Perform(Played.Of(notes), plan).Events[0].EndSeconds, 1e-9);
    }

    [Theory]
    [InlineData(0.225 - 0.025, 1)]
    [InlineData(0.35 - 0.025, 2)]
    public void Let_ring_ends_where_the_hand_leaves_its_position(double end, int shiftedFrom)
    {
        var played = Played.Of("6:5/1D 5:7/3U 4:9/2D");
        var notes = played.Notes.Select((note, at) => note with { Position = at < shiftedFrom ? 5 : 8 });
        var plan = Played.At() with { Manner = PlayingManner.LetRing };

        Assert.Equal(
            end,
            Played.Perform(played with { Notes = [.. notes] }, plan).Events[0].EndSeconds,
            1e-9
        );
    }

    [Fact]
    public void Palm_muting_changes_the_sound_and_not_the_time()
    {
        var plan = Played.At() with { Manner = PlayingManner.PalmMuted };
        var played = Played.Of("6:5/1D 5:7/3U 5:5/1D");
        var muted = Played.Perform(played, plan).Events;

        Assert.All(muted, e => Assert.True(e.PalmMuted));
        Assert.Equal(
            Played.Perform(played).Events.Select(e => e.EndSeconds),
            muted.Select(e => e.EndSeconds)
        );
    }
}
