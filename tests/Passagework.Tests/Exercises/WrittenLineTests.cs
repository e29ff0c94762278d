using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Tests.Instrument;
using Passagework.Theory;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

public class WrittenLineTests
{
    [Fact]
    public void Build_places_written_notes_in_time()
    {
        var line = Line(Written(Note("6:5", 1, 16), Rest(1, 16), Note("6:8", 1, 8)));

        Assert.Equal("0+1/16 [1/16+1/16] 1/8+1/8", Times(line));
        Assert.Equal([45, 48], line.Notes.Select(note => note.Midi));
    }

    [Fact]
    public void Build_groups_by_the_felt_beat_when_no_groups_are_written()
    {
        var line = Line(
            Written(
                Note("6:5", 1, 8),
                Rest(1, 16),
                Note("6:8", 1, 16),
                Rest(1, 4),
                Note("5:5", 1, 8),
                Note("5:7", 1, 4),
                Note("4:5", 1, 8)
            )
        );

        // A beat of silence has its number too; the note across the third beat line belongs where it begins.
        Assert.Equal([0, 0, 2, 2, 3], line.Notes.Select(note => note.Group ?? -1));
        Assert.Equal([0, 2, 0, 1, 0], line.Notes.Select(note => note.InGroup ?? -1));
    }

    [Fact]
    public void Build_groups_by_dotted_beats_in_compound_time()
    {
        var meter = Meter.TryParse("6/8", out var sixEight) ? sixEight : default;
        var notes = Enumerable.Repeat(Note("6:5", 1, 8), 6).ToArray();

        var line = Line(Written(notes) with { Rhythm = new RhythmPlan { Meter = meter } });

        Assert.Equal([0, 0, 0, 1, 1, 1], line.Notes.Select(note => note.Group ?? -1));
    }

    [Fact]
    public void Build_keeps_written_groups()
    {
        var line = Line(
            Written(
                Note("6:5", 1, 16) with
                {
                    Group = 0,
                },
                Rest(1, 16),
                Note("6:8", 1, 16) with
                {
                    Group = 0,
                },
                Rest(1, 16),
                Note("5:5", 1, 16) with
                {
                    Group = 1,
                }
            )
        );

        Assert.Equal([0, 0, 1], line.Notes.Select(note => note.Group ?? -1));
        Assert.Equal([0, 2, 0], line.Notes.Select(note => note.InGroup ?? -1));
    }

    [Fact]
    public void Build_keeps_accents_and_slurs()
    {
        var line = Line(
            Written(Note("6:5", 1, 16) with { Accent = true }, Note("6:8", 1, 16) with { Slur = Slur.Hammer })
        );

        Assert.True(line.Notes[0].Accent);
        Assert.Equal([Slur.None, Slur.Hammer], line.Notes.Select(note => note.Slur));
    }

    [Fact]
    public void Build_leaves_a_pitch_without_a_place_to_the_programme()
    {
        var line = Line(
            Written(Pitched("Db4"), Note("6:5", 1, 16)) with
            {
                Instrument = Necks.Tuned("standard", capo: 2),
            }
        );

        Assert.Null(line.Notes[0].Place);
        Assert.Equal("Db4", line.Notes[0].Pitch.ToString());
        // A written pitch is what sounds; a place sounds with the capo.
        Assert.Equal([61, 47], line.Notes.Select(note => note.Midi));
    }

    [Fact]
    public void Build_refuses_a_pitch_that_the_instrument_has_not() =>
        Assert.Equal(
            "$.written[0].pitch: the instrument has no C2; a pitch within its range",
            Refuse(Written(Pitched("C2"))).ToString()
        );

    [Fact]
    public void Build_refuses_a_place_that_the_instrument_has_not() =>
        Assert.Equal(
            "$.written[1].place: the instrument has no place 7:1; strings 1 to 6, frets 0 to 22",
            Refuse(Written(Note("6:5", 1, 16), Note("7:1", 1, 16))).ToString()
        );

    [Fact]
    public void Build_refuses_groups_for_some_notes_only() =>
        Assert.Equal(
            "$.written[1]: only some notes have a group; a group for all notes or for none",
            Refuse(Written(Note("6:5", 1, 16) with { Group = 0 }, Note("6:8", 1, 16))).ToString()
        );

    [Fact]
    public void Build_refuses_groups_that_go_back() =>
        Assert.Equal(
            "$.written[1].group: group 0 comes after a later one; rising numbers",
            Refuse(Written(Note("6:5", 1, 16) with { Group = 1 }, Note("6:8", 1, 16) with { Group = 0 }))
                .ToString()
        );

    [Fact]
    public void Build_refuses_a_line_of_rests() =>
        Assert.Equal(
            "$.written: the line holds only rests; at least one note",
            Refuse(Written(Rest(1, 4))).ToString()
        );

    private static Recipe Written(params WrittenEntry[] entries) =>
        new() { Written = new WrittenLine([.. entries]) };

    private static WrittenEntry Note(string place, long top, long bottom) =>
        new() { Place = Necks.At(place), Duration = Fraction.Of(top, bottom) };

    private static WrittenEntry Pitched(string pitch) =>
        new()
        {
            Pitch = SpelledPitch.TryParse(pitch, out var parsed) ? parsed : null,
            Duration = Fraction.Of(1, 8),
        };

    private static WrittenEntry Rest(long top, long bottom) => new() { Duration = Fraction.Of(top, bottom) };
}
