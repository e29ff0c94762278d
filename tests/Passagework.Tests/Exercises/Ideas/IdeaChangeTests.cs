using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Exercises.Ideas;

public class IdeaChangeTests
{
    // One value of every field of a recipe file, typed as a teacher would, and read back from the control.
    [Theory]
    [InlineData("groups-of-five-up", "notes.root", "Bb", "B♭")]
    [InlineData("groups-of-five-up", "notes.scale", "0 2 5 7 9", "semitones 0 2 5 7 9")]
    [InlineData("groups-of-five-up", "instrument.tuning", "drop D", "drop D tuning")]
    [InlineData("groups-of-five-up", "instrument.tuning", "D2 A2 D3 G3 A3 E4", "tuned D2 A2 D3 G3 A3 E4")]
    [InlineData("groups-of-five-up", "instrument.capo", "2", "capo at fret 2")]
    [InlineData("groups-of-five-up", "instrument.frets", "24", "24 frets")]
    [InlineData("groups-of-five-up", "instrument.scaleLengthMm", "650", "strings of 650 mm")]
    [InlineData(
        "groups-of-five-up",
        "instrument.stringSpacingMm",
        "7.2 10.8",
        "strings 7.2 to 10.8 mm apart"
    )]
    [InlineData("groups-of-five-up", "layout", "box 3", "box 3")]
    [InlineData("groups-of-five-up", "layout.near", "12", "near fret 12")]
    [InlineData("one-sided-rolls-low-up", "layout.number", "2", "of box 2")]
    [InlineData("one-sided-rolls-low-up", "layout.side", "high", "higher side")]
    [InlineData("three-per-string-fours-up", "layout.count", "4", "four notes a string")]
    [InlineData("three-per-string-fours-up", "layout.from", "6:7", "from 6:7")]
    [InlineData("diagonal-up", "layout.pattern", "3 2", "three and two on a string")]
    [InlineData("one-string-run-up", "layout.string", "2", "string 2")]
    [InlineData("one-string-run-up", "layout.from", "3", "from fret 3")]
    [InlineData("one-string-run-up", "layout.to", "20", "to fret 20")]
    [InlineData("position-shift-up", "layout.strings", "3 2", "strings 3 and 2")]
    [InlineData("position-shift-up", "layout.boxes", "1 2 3", "boxes 1 to 3")]
    [InlineData("two-string-loop", "layout.boxes", "2", "box 2")]
    [InlineData("trill-one-three", "layout.places", "3:5 3:8", "3:5 3:8")]
    [InlineData("groups-of-five-up", "cell.offsets", "1 2 5 – 2", "1 2 5 – 2")]
    [InlineData("groups-of-five-up", "cell.accents", "1 3", "accents on 1 and 3")]
    [InlineData("groups-of-five-up", "cell.durations", "1 1 1 1 2", "lengths 1 1 1 1 2")]
    [InlineData("groups-of-five-up", "cell.slurs", "2 4", "notes 2 and 4 slurred")]
    [InlineData("groups-of-five-up", "cell.sound", "palm-muted", "palm-muted")]
    [InlineData("groups-of-five-up", "movement.step", "-2", "back by two steps")]
    [InlineData("groups-of-five-up", "movement.direction", "down-and-up", "down and up")]
    [InlineData("groups-of-five-up", "movement.from", "3", "from note 3")]
    [InlineData("groups-of-five-up", "movement.to", "9", "to note 9")]
    [InlineData("groups-of-five-up", "movement.repeat", "40", "40 times")]
    [InlineData("groups-of-five-up", "movement.turn", "shared", "turning note once")]
    [InlineData("groups-of-five-up", "movement.ending", "hold-root", "hold the root")]
    [InlineData("groups-of-five-up", "rhythm.notesPerBeat", "3", "three to the beat")]
    [InlineData("groups-of-five-up", "rhythm.pattern", "1/8 1/16", "lengths 1/8 1/16")]
    [InlineData("groups-of-five-up", "rhythm.meter", "7/8", "7/8")]
    [InlineData("groups-of-five-up", "rhythm.swing", "2/3", "swung two to one")]
    [InlineData("groups-of-five-up", "rhythm.startOffset", "1/16", "1/16 after the bar line")]
    [InlineData("groups-of-five-up", "rhythm.tempo", "97.5", "97.5 beats a minute")]
    [InlineData("groups-of-five-up", "picking.technique", "economy", "economy")]
    [InlineData("groups-of-five-up", "picking.first", "up", "first stroke up")]
    [InlineData("thumb-and-fingers-rolling", "picking.fingers", "i-m", "i and m in turn")]
    [InlineData("groups-of-five-up", "fretting.avoid", "1 3", "fingers 1 3")]
    [InlineData("groups-of-five-up", "fretting.slides", "at-shifts", "slides where the hand shifts")]
    public void Every_field_can_be_set_and_read(string id, string key, string text, string value)
    {
        var before = Library.Find(id).OrThrow().Recipe;
        var changed = IdeaChange.Set(before, key, text).OrThrow();

        Assert.NotEqual(before, changed);
        Assert.Equal(value, Axis(changed, key).Value);
    }

    [Theory]
    [InlineData("layout", "box 6", "1 to 5")]
    [InlineData("movement.step", "9", "-7 to 7")]
    [InlineData("cell.offsets", "1 2 3 4 5 6 7 8 9 10 11 12 13", "at most 12 notes wide")]
    [InlineData("cell.durations", "1 2", "each note and rest")]
    [InlineData("layout.near", "30", "neck ends at fret 22")]
    [InlineData("rhythm.startOffset", "5/4", "below 1")]
    [InlineData("fretting.avoid", "5", "from 1 to 4")]
    [InlineData("notes.scale", "0 3 3", "rising semitones")]
    [InlineData("bars", "fills 9 bars", "change something else")]
    public void What_cannot_be_is_refused_at_its_control_with_what_can(string key, string text, string right)
    {
        var fault = Refused(IdeaChange.Set(Library.Find("groups-of-five-up").OrThrow().Recipe, key, text));

        Assert.Equal(key, fault.Where);
        Assert.Contains(right, $"{fault.What}; {fault.Right}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_control_that_there_is_not_is_refused_with_the_one_meant()
    {
        var fault = Refused(
            IdeaChange.Set(Library.Find("groups-of-five-up").OrThrow().Recipe, "movement.stepp", "2")
        );

        Assert.Equal("did you mean 'movement.step'?", fault.Right);
    }

    [Fact]
    public void A_box_that_the_new_scale_does_not_have_becomes_its_last()
    {
        var seventh = Set("scale-thirds-up", ("layout", "box 7"));

        Assert.Equal("box 5", Axis(Set(seventh, ("notes.scale", "minor pentatonic")), "layout").Value);
    }

    // G on string 6 (fret 3) is not in A major; F sharp at fret 2 and G sharp at fret 4 are as near, and the lower is taken.
    [Fact]
    public void A_run_that_began_off_the_new_scale_begins_on_the_nearest_note()
    {
        var run = Set("three-per-string-fours-up", ("layout.from", "6:3"));

        Assert.Equal("from 6:2", Axis(Set(run, ("notes.scale", "major")), "layout.from").Value);
    }

    [Fact]
    public void A_run_goes_back_to_the_box_that_it_began_with()
    {
        var run = Set("groups-of-five-up", ("layout", "box 5"), ("layout", "per-string"));

        Assert.Equal("from 6:3", Axis(run, "layout.from").Value);
        Assert.Equal(new Layout.Box(5, 3), LayoutChoice.Take(run, "box").OrThrow().Layout);
    }

    // Three notes a string from 6:8 need 24 frets (worked out from the pitches): the next lower note has room.
    [Fact]
    public void A_run_that_would_leave_the_neck_begins_lower()
    {
        var run = Set("groups-of-five-up", ("layout", "box 2"), ("layout", "per-string"));

        Assert.Equal("from 6:5", Axis(run, "layout.from").Value);
    }

    [Fact]
    public void Part_of_a_layout_that_a_shorter_one_does_not_have_becomes_the_whole()
    {
        var boxed = Set("first-notes-up", ("layout", "box 1"), ("notes.scale", "minor pentatonic"));

        Assert.Equal((null, null), (boxed.Movement.From, boxed.Movement.To));
    }

    [Fact]
    public void Cells_that_followed_one_another_go_on_doing_so_and_keep_what_they_can()
    {
        var changed = Set("position-shift-up", ("cell.accents", "1 4"), ("cell.offsets", "1 2 3"));

        Assert.Equal(3, changed.Movement.Step);
        Assert.Equal([0], changed.Cell?.Accents);
    }

    [Fact]
    public void A_cell_on_the_spot_is_repeated_and_one_that_moves_again_is_not()
    {
        var still = Set("groups-of-five-up", ("movement.step", "0"));

        Assert.Equal(4, still.Movement.Repeat);
        Assert.Equal(1, Set(still, ("movement.step", "1")).Movement.Repeat);
    }

    [Fact]
    public void A_pattern_and_the_lengths_of_a_cell_take_turns()
    {
        var pattern = Set("bursts-five", ("rhythm.pattern", "1/8 1/16 1/16"));
        var lengths = Set(pattern, ("cell.durations", "1 1 1 1 2 2"));

        Assert.Empty(pattern.Cell!.Durations);
        Assert.Empty(lengths.Rhythm.Pattern);
    }

    [Fact]
    public void Locks_stay_on_notes_that_stay_and_go_from_those_that_do_not()
    {
        var locked = NoteLocks
            .Set(Library.Find("groups-of-five-up").OrThrow().Recipe, new Lock(2, Finger: 2))
            .Then(one => NoteLocks.Set(one, new Lock(7, Finger: 4)))
            .OrThrow();

        var skipping = Set(locked, ("movement.step", "2"));

        Assert.Equal([new Lock(2, Finger: 2)], skipping.Fretting.Locks);
    }

    [Fact]
    public void Places_are_those_where_the_notes_lay()
    {
        var places = Set("groups-of-five-up", ("layout", "places"));
        static IEnumerable<Place?> Of(Recipe recipe) =>
            LineBuilder.Build(recipe).OrThrow().Notes.Select(note => note.Place);

        Assert.Equal(Of(Library.Find("groups-of-five-up").OrThrow().Recipe), Of(places));
    }

    [Fact]
    public void Steps_end_where_the_values_end_and_roots_go_round()
    {
        var fives = Library.Find("groups-of-five-up").OrThrow().Recipe;
        var last = IdeaChange.Step(fives, "layout", -1);
        var b = Set(fives, ("notes.root", "B"));

        Assert.Equal("'box 1' is the first value of layout", Refused(last).What);
        Assert.Equal("C", Axis(IdeaChange.Step(b, "notes.root", 1).OrThrow(), "notes.root").Text);
        Assert.Equal(
            "by two steps",
            Axis(IdeaChange.Step(fives, "movement.step", 1).OrThrow(), "movement.step").Value
        );
        Assert.Equal(
            ("one back", "two on"),
            (Axis(fives, "movement.step").Backward, Axis(fives, "movement.step").Forward)
        );
    }

    private static Axis Axis(Recipe recipe, string key) =>
        RandomIdeas.AxesOf(recipe).Single(axis => axis.Key == key);

    private static Recipe Set(string id, params (string Key, string Value)[] changes) =>
        Set(Library.Find(id).OrThrow().Recipe, changes);

    private static Recipe Set(Recipe recipe, params (string Key, string Value)[] changes) =>
        changes.Aggregate(recipe, (one, change) => IdeaChange.Set(one, change.Key, change.Value).OrThrow());

    private static Fault Refused(Outcome<Recipe> outcome) =>
        Assert.IsType<Outcome<Recipe>.Refused>(outcome).Fault;
}
