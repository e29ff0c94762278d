using CsCheck;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Exercises.Ideas;

public class RoomStyleTests
{
    private static readonly RoomStyle Other = new()
    {
        Boxes = BoxNumbering.WithRootBox(4),
        Notes = NoteNaming.LettersWithH,
    };

    private static readonly Gen<RoomStyle> Styles = Gen.Select(
        Gen.Int[1, 5],
        Gen.Enum<NoteNaming>(),
        (box, notes) => new RoomStyle { Boxes = BoxNumbering.WithRootBox(box), Notes = notes }
    );

    [Fact]
    public void Controls_call_boxes_and_notes_as_the_room_does()
    {
        var recipe = Set(Library.Find("groups-of-five-up").OrThrow().Recipe, "notes.root", "Bb");

        Assert.Equal("B", AxisOf(recipe, "notes.root").Value);
        Assert.Equal("box 4", AxisOf(recipe, "layout").Value);
        Assert.Equal("box 1", AxisOf(Set(recipe, "layout", "box 3"), "layout").Value);
        Assert.Equal("of box 4", AxisOf(Set(recipe, "layout", "one-side"), "layout.number").Value);
        Assert.Equal("boxes 4 and 5", AxisOf(Set(recipe, "layout", "joined"), "layout.boxes").Value);
        Assert.Equal(
            "Five neighbouring notes of the B minor pentatonic, then the same from one note higher, up through box 4 near fret 6 to its top.",
            IdeaSentence.Of(Set(Set(recipe, "movement.ending", "none"), "layout.near", "6"), Other)
        );
    }

    [Fact]
    public void A_list_of_boxes_is_typed_in_the_numbers_of_the_room()
    {
        var chain = Set(Library.Find("groups-of-five-up").OrThrow().Recipe, "layout", "chain");

        var changed = IdeaChange.Type(chain, "layout.boxes", "4 5 1", Other).OrThrow();

        Assert.Equal([1, 2, 3], ((Layout.Chain)changed.Layout!).Boxes);
        Assert.Equal("4 5 1", AxisOf(changed, "layout.boxes").Typed);
    }

    [Fact]
    public void A_tuning_is_typed_in_the_names_of_the_room()
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;

        var changed = IdeaChange.Type(recipe, "instrument.tuning", "E2 A2 D3 G3 B3 Es4", Other).OrThrow();

        Assert.Equal("E2 A2 D3 G3 Bb3 Eb4", changed.Instrument.Tuning.Text);
        Assert.Equal("tuned E2 A2 D3 G3 B3 Es4", AxisOf(changed, "instrument.tuning").Value);
    }

    [Fact]
    public void What_stands_in_a_field_leaves_the_idea_as_it_is_in_every_room() =>
        Gen.Select(RandomIdeas.All, Styles)
            .Sample(
                (recipe, style) =>
                    IdeaAxes
                        .Of(recipe, style)
                        .SelectMany(group => group.Axes)
                        .Where(axis => axis.Typing is not null && axis.Text.Length > 0)
                        .All(axis => IdeaChange.Type(recipe, axis.Key, axis.Typed, style) == recipe),
                iter: 300
            );

    [Fact]
    public void A_room_changes_no_keys_of_choices_so_that_files_keep_their_words() =>
        Gen.Select(RandomIdeas.All, Styles)
            .Sample(
                (recipe, style) => Keys(IdeaAxes.Of(recipe, style)).SequenceEqual(Keys(IdeaAxes.Of(recipe))),
                iter: 200
            );

    [Theory]
    [InlineData(70, 70, "a start below the goal")]
    [InlineData(29, 95, "both from 30 to 100")]
    [InlineData(70, 101, "both from 30 to 100")]
    public void A_plan_that_goes_nowhere_is_refused(int start, int goal, string right)
    {
        Assert.False(PlanShares.Of(start, goal).TryGet(out _, out var fault));
        Assert.Equal(right, fault.Right);
    }

    [Fact]
    public void The_usual_plan_runs_from_70_to_95() =>
        Assert.Equal((70, 95), (default(PlanShares).Start, default(PlanShares).Goal));

    private static IEnumerable<string> Keys(IEnumerable<AxisGroup> groups) =>
        groups
            .SelectMany(group => group.Axes)
            .SelectMany(axis => axis.Choices.Select(choice => choice.Key).Append(axis.Text));

    private static Recipe Set(Recipe recipe, string key, string value) =>
        IdeaChange.Set(recipe, key, value).OrThrow();

    private static Axis AxisOf(Recipe recipe, string key) =>
        IdeaAxes.Of(recipe, Other).SelectMany(group => group.Axes).Single(axis => axis.Key == key);
}
