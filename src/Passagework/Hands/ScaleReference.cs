using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Hands;

/// <summary>The plain scale in the same layout, up and down, against which an exercise is judged.</summary>
/// <param name="EffectiveFingers">How many fingers it spreads over.</param>
/// <param name="LeastCeiling">Its ceiling, notes a second; null where there is no such scale.</param>
public sealed record ScaleReference(double EffectiveFingers, double? LeastCeiling)
{
    /// <summary>
    /// The reference of a recipe for a player. A written line, and a layout whose plain scale no hand can play, are
    /// judged by the fingers of box 1 at fret 5 alone.
    /// </summary>
    public static ScaleReference For(Recipe recipe, Player player)
    {
        if (ScaleOf(recipe) is { } scale && Plan(scale, player).TryGet(out var planned, out _))
        {
            var least = CeilingFinder.Plain(planned.Demands, player.Parameters).Least;
            return new ScaleReference(Fingers(planned), least);
        }

        // Where even the box can't be fingered nothing is fretted, and one finger is as good as none.
        return new ScaleReference(
            Plan(Box(recipe), player).TryGet(out var box, out _) ? Fingers(box) : 1,
            null
        );
    }

    /// <summary>
    /// The straight scale, up and down with the top note once, over the whole path: same picking, metre, notes a beat,
    /// swing and avoided fingers, no slurs of the cell. One side of a box is judged by its whole box. Null for a
    /// written line.
    /// </summary>
    public static Recipe? ScaleOf(Recipe recipe) =>
        recipe.Layout is { } layout
            ? recipe with
            {
                Layout = layout is Layout.OneSide side ? new Layout.Box(side.Number, side.Near) : layout,
                Cell = new Cell { Offsets = [0] },
                Movement = new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared },
                Rhythm = recipe.Rhythm with { Pattern = [], StartOffset = Fraction.Zero },
                Fretting = new FrettingPlan { Avoid = recipe.Fretting.Avoid },
            }
            : null;

    private static Recipe Box(Recipe recipe) =>
        new()
        {
            Notes = NoteSet.TryNamed(NoteName.Of(5, 0), "minor pentatonic", out var set) ? set : null,
            Layout = new Layout.Box(1, 5),
            Cell = new Cell { Offsets = [0] },
            Movement = new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared },
            Fretting = new FrettingPlan { Avoid = recipe.Fretting.Avoid },
        };

    private static Outcome<PlannedLine> Plan(Recipe scale, Player player) =>
        LineBuilder.Build(scale).Then(line => Realizer.Plan(line, player));

    private static double Fingers(PlannedLine planned) =>
        FrettingCounts.Of(planned.Fingering).EffectiveFingers;
}
