using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Exercises;

public class KeyChangeTests
{
    // The shorter way along the neck, and the longer one where the shorter leaves the neck.
    [Theory]
    [InlineData("three-per-string-fours-up", "G", "6:3")]
    [InlineData("three-per-string-fours-up", "B", "6:7")]
    [InlineData("three-per-string-fours-up", "Eb", "6:11")]
    [InlineData("diagonal-up", "E", "6:10")]
    [InlineData("finger-orders-in-order", "F", "6:1")]
    [InlineData("one-string-run-up", "G", "1:3")]
    public void Written_places_move_along_the_neck(string id, string root, string first) =>
        Assert.Equal(first, First(RecipeChange.Root(Library.Find(id).OrThrow().Recipe, root).OrThrow()));

    [Fact]
    public void Layouts_near_a_fret_are_laid_out_anew()
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;

        Assert.Equal("6:8", First(RecipeChange.Root(recipe, "C").OrThrow()));
        Assert.Equal("6:7", First(RecipeChange.Tuning(recipe, "drop D").OrThrow()));
    }

    [Fact]
    public void Written_places_keep_their_pitch_in_another_tuning()
    {
        var recipe = Library.Find("three-per-string-fours-up").OrThrow().Recipe;
        var retuned = RecipeChange.Tuning(recipe, "drop D").OrThrow();

        Assert.Equal("6:7", First(retuned));
        Assert.Equal(45, LineBuilder.Build(retuned).OrThrow().Notes[0].Midi);
    }

    [Fact]
    public void Pitches_without_a_place_move_by_the_interval()
    {
        var notes = NoteSet.TryNamed(NoteName.Of(5, 0), "minor pentatonic", out var set) ? set : null;
        var pitch = SpelledPitch.TryParse("C4", out var c4) ? c4 : default;
        var recipe = new Recipe
        {
            Notes = notes,
            Written = new WrittenLine([new WrittenEntry { Pitch = pitch, Duration = Fraction.Of(1, 8) }]),
        };

        var moved = RecipeChange.Root(recipe, "B").OrThrow();

        Assert.Equal("D4", moved.Written?.Entries[0].Pitch.ToString());
    }

    [Fact]
    public void Fixed_positions_move_with_the_places()
    {
        var recipe = Library.Find("finger-orders-in-order").OrThrow().Recipe;

        var moved = RecipeChange.Root(recipe, "C").OrThrow();

        Assert.Equal((5, 8), (recipe.Fretting.Locks[0].Position, moved.Fretting.Locks[0].Position));
    }

    [Fact]
    public void Shape_that_a_tuning_changes_frees_the_fingers_and_keeps_the_strokes()
    {
        var orders = RecipeChange
            .Tuning(Library.Find("finger-orders-in-order").OrThrow().Recipe, "open G")
            .OrThrow();
        var plucked = RecipeChange
            .Tuning(Library.Find("thumb-and-fingers-rolling").OrThrow().Recipe, "drop D")
            .OrThrow();

        Assert.Empty(orders.Fretting.Locks);
        Assert.Equal(Stroke.Thumb, plucked.Fretting.Locks[0].Stroke);
    }

    [Fact]
    public void Same_root_and_tuning_change_nothing()
    {
        var recipe = Library.Find("first-notes-up").OrThrow().Recipe;

        Assert.Equal(recipe, RecipeChange.Root(recipe, "C").OrThrow());
        Assert.Equal(recipe, RecipeChange.Tuning(recipe, "standard").OrThrow());
    }

    [Theory]
    [InlineData("joined", "6:5")]
    [InlineData("per-string", "6:5")]
    [InlineData("diagonal", "6:5")]
    [InlineData("one-string", "1:5")]
    [InlineData("string-pair", "2:5")]
    [InlineData("chain", "2:5")]
    [InlineData("one-side", "6:5")]
    [InlineData("open", "6:0")]
    public void Kind_of_layout_alone_is_enough(string kind, string first) =>
        Assert.Equal(
            first,
            First(RecipeChange.Layout(Library.Find("straight-up").OrThrow().Recipe, kind).OrThrow())
        );

    private static string? First(Recipe recipe) =>
        LineBuilder.Build(recipe).OrThrow().Notes[0].Place?.ToString();
}
