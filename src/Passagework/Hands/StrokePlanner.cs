using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>Plans the picking hand: a stroke, a finger or a slur for every note of a fingered line.</summary>
/// <example>
/// <c>StrokePlanner.Plan(line, fingering, Player.At(2))</c>
/// </example>
public static class StrokePlanner
{
    /// <summary>
    /// The strokes of the recipe's technique. Where the technique leaves a choice the least effort decides; ties go
    /// to D, U, p, i, m, a in this order, then to the lower string number of plectrum or anchor.
    /// </summary>
    public static Outcome<StrokePlan> Plan(Line line, Fingering fingering, Player player)
    {
        var picking = line.Recipe.Picking;
        var moves = new PlectrumMoves(Geometry.Of(line.Recipe.Instrument).PickingSpacingMm, player.Clear);
        Stroke[] firsts = picking.First switch
        {
            FirstStroke.Down => [Stroke.Down],
            FirstStroke.Up => [Stroke.Up],
            _ => [Stroke.Down, Stroke.Up],
        };
        Outcome<StrokePlan>? best = null;
        foreach (var first in firsts)
        {
            var rules = StrokeRules.For(picking, first, moves, line.Recipe.Instrument.Tuning.StringCount);
            best = Cheaper(best, new StrokeProblem(line, fingering, player, rules).Solve());
        }

        return best ?? throw new System.Diagnostics.UnreachableException();
    }

    private static Outcome<StrokePlan> Cheaper(Outcome<StrokePlan>? one, Outcome<StrokePlan> other) =>
        (one, other) switch
        {
            (null, _) => other,
            (Outcome<StrokePlan>.Done a, Outcome<StrokePlan>.Done b) => b.Value.Cost
            < a.Value.Cost - LayeredSolver.Tolerance
                ? b
                : a,
            (Outcome<StrokePlan>.Done a, _) => a,
            _ => other,
        };
}
