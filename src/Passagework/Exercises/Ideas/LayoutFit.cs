using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises.Ideas;

/// <summary>What a layout has to give up where a new scale, tuning or layout leaves no room for it.</summary>
internal static class LayoutFit
{
    /// <summary>
    /// Boxes that the scale does not have become its last; a run that began on a note that is not in the scale begins on
    /// the nearest one of the same string; a part of a layout that is too short for it becomes the whole.
    /// </summary>
    public static Outcome<Recipe> Fitted(Recipe recipe)
    {
        if (recipe is not { Layout: { } layout, Notes: { } notes })
        {
            return recipe;
        }

        return Whole(recipe with { Layout = Boxed(layout, notes.Semitones.Length, recipe) });
    }

    /// <summary>The part of the layout that is used, or the whole where the layout is too short for it.</summary>
    public static Outcome<Recipe> Whole(Recipe recipe)
    {
        var movement = recipe.Movement;
        if (movement is { From: null, To: null } || recipe is not { Layout: { } layout, Notes: { } notes })
        {
            return recipe;
        }

        return LayoutPlanner
            .Lay(layout, notes, recipe.Instrument)
            .Then<Recipe>(path =>
                (movement.From ?? 0) < path.Length && (movement.To ?? 0) < path.Length
                    ? recipe
                    : recipe with
                    {
                        Movement = movement with { From = null, To = null },
                    }
            );
    }

    private static Layout Boxed(Layout layout, int boxes, Recipe recipe)
    {
        int Least(int number) => Math.Min(number, boxes);
        return layout switch
        {
            Layout.Box box => box with { Number = Least(box.Number) },
            Layout.OneSide side => side with { Number = Least(side.Number) },
            Layout.Joined joined => joined with
            {
                First = Least(joined.First),
                Second = (Least(joined.First) % boxes) + 1,
            },
            Layout.StringPair pair => pair with { Boxes = [.. pair.Boxes.Select(Least).Distinct()] },
            Layout.Chain chain => chain with { Boxes = [.. chain.Boxes.Select(Least).Distinct()] },
            Layout.PerString run => run with { From = Nearest(run.From, recipe) },
            Layout.Diagonal run => run with { From = Nearest(run.From, recipe) },
            _ => layout,
        };
    }

    // The nearest note of the scale on the same string; of two the lower.
    private static Place Nearest(Place from, Recipe recipe)
    {
        var scale = new ScaleOnNeck(recipe.Notes!, recipe.Instrument);
        if (from.String > scale.Strings)
        {
            return from;
        }

        var spots = scale.Between(from.String, 0, scale.Frets).ToList();
        return spots.Count == 0
            ? from
            : Place.At(from.String, spots.MinBy(spot => (Math.Abs(spot.Fret - from.Fret), spot.Fret)).Fret);
    }
}
