using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Variants;
using Passagework.Instrument;

namespace Passagework.Tests.Hands.Variants;

public class SiblingsTests
{
    private static readonly Player Intermediate = Player.At(2);

    [Theory]
    [InlineData("groups-of-five-up", 5)]
    [InlineData("scale-thirds-up", 7)]
    [InlineData("two-string-loop", 5)]
    [InlineData("diagonal-up", 0)]
    [InlineData("finger-orders-in-order", 0)]
    public void There_is_one_for_every_box_of_the_scale(string id, int boxes) =>
        Assert.Equal(boxes, Siblings.Boxes(Recipe(id), Intermediate).Length);

    [Fact]
    public void Each_box_is_measured_where_it_lies()
    {
        var boxes = Siblings.Boxes(Recipe("groups-of-five-up"), Intermediate);

        Assert.Equal(["box 1", "box 2", "box 3", "box 4", "box 5"], boxes.Select(box => box.Words));
        Assert.Equal(Measured(Recipe("groups-of-five-up")), boxes[0].Top);
        Assert.All(boxes, box => Assert.Equal(Measured(box.Recipe), box.Top));
        Assert.Equal(new Layout.Box(3, 5), boxes[2].Recipe.Layout);
    }

    [Fact]
    public void Boxes_have_the_numbers_that_the_teacher_gives_them()
    {
        var boxes = Siblings.Boxes(
            Recipe("groups-of-five-up"),
            Intermediate,
            new RoomStyle { Boxes = BoxNumbering.WithRootBox(4) }
        );

        Assert.Equal(["box 4", "box 5", "box 1", "box 2", "box 3"], boxes.Select(box => box.Words));
    }

    [Fact]
    public void There_is_one_for_every_key()
    {
        var keys = Siblings.Keys(Recipe("groups-of-five-up"), Intermediate);

        Assert.Equal("C C♯ D E♭ E F F♯ G G♯ A B♭ B", string.Join(' ', keys.Select(key => key.Words)));
        Assert.All(keys, key => Assert.Equal(Measured(key.Recipe), key.Top));
    }

    // Where written places would leave the neck the reason stands in place of a tempo.
    [Fact]
    public void A_key_that_the_neck_does_not_have_is_told()
    {
        var low = RecipeJson
            .Read(
                """
                { "passagework": 1, "notes": { "root": "A", "scale": "minor pentatonic" },
                  "instrument": { "frets": 12 },
                  "layout": { "kind": "places", "places": ["6:0", "6:3", "1:12"] }, "cell": { "offsets": [0, 1] } }
                """
            )
            .OrThrow();

        var other = Siblings.Keys(low, Intermediate).First(key => key.Words == "B");

        Assert.NotNull(other.Impossible);
        Assert.Null(other.Top);
    }

    [Fact]
    public void The_other_first_stroke_is_the_other_one()
    {
        var other = Siblings.FirstStroke(Recipe("groups-of-five-up"), Intermediate);

        Assert.Equal("from an up-stroke", other?.Words);
        Assert.Equal(FirstStroke.Up, other?.Recipe.Picking.First);
        Assert.Null(Siblings.FirstStroke(Recipe("first-notes-up"), Intermediate));
    }

    private static Recipe Recipe(string id) => Library.Find(id).OrThrow().Recipe;

    private static TopTempo? Measured(Recipe recipe) => Measurer.Measure(recipe, Intermediate).OrThrow().Top;
}
