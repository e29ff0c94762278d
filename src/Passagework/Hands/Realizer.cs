using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>Plans both hands of a line for a player.</summary>
/// <example>
/// <c>Realizer.Realize(line, Player.At(2))</c>
/// </example>
public static class Realizer
{
    private const int FingeringsTried = 5;

    /// <summary>The fingering and the strokes of a line; refused when no hand can play it.</summary>
    public static Outcome<Realization> Realize(Line line, Player player) =>
        Plan(line, player).Then<Realization>(planned => planned.Realization);

    /// <summary>
    /// The hands are planned one after the other. Where strings are free the fingering changes the strokes, so the
    /// five best fingerings are tried and the one with the highest ceiling kept: a heuristic, not an exact optimum.
    /// </summary>
    internal static Outcome<PlannedLine> Plan(Line line, Player player)
    {
        var free = line.Notes.Any(note => note.Place is null);
        return FingeringPlanner
            .PlanBest(line, player, free ? FingeringsTried : 1)
            .Then(fingerings => BestOf(line, player, fingerings));
    }

    private static Outcome<PlannedLine> BestOf(Line line, Player player, ImmutableArray<Fingering> fingerings)
    {
        Outcome<PlannedLine>? best = null;
        foreach (var fingering in fingerings)
        {
            var planned = WithStrokes(line, player, fingering);
            if (best is not Outcome<PlannedLine>.Done kept || Load(planned, player) < Load(kept, player))
            {
                best = planned;
            }
        }

        return best ?? throw new System.Diagnostics.UnreachableException("There is at least one fingering.");
    }

    private static Outcome<PlannedLine> WithStrokes(Line line, Player player, Fingering fingering) =>
        StrokePlanner
            .Plan(line, fingering, player)
            .Then<PlannedLine>(strokes => new PlannedLine(
                line,
                fingering,
                strokes,
                new LineDemands(line, fingering, strokes, player)
            ));

    private static double Load(Outcome<PlannedLine> planned, Player player)
    {
        if (!planned.TryGet(out var line, out _))
        {
            return double.PositiveInfinity;
        }

        var ceiling = CeilingFinder.Plain(line.Demands, player.Parameters);
        return 1
            / Math.Min(
                ceiling.Fretting ?? double.PositiveInfinity,
                ceiling.Picking ?? double.PositiveInfinity
            );
    }
}
