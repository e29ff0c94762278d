using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>Plans the fretting hand: finger and position for every note, and the string where it is free.</summary>
/// <example>
/// <c>FingeringPlanner.Plan(line, Player.At(2))</c>
/// </example>
public static class FingeringPlanner
{
    /// <summary>The best fingering for a player.</summary>
    public static Outcome<Fingering> Plan(
        Line line,
        Player player,
        FingeringAim aim = FingeringAim.LeastEffort
    ) => PlanBest(line, player, 1, aim).Then<Fingering>(best => best[0]);

    /// <summary>
    /// The best few different fingerings, best first; fewer when there are not so many. Refused when no hand can
    /// play the line: the fault names the pair of notes.
    /// </summary>
    public static Outcome<ImmutableArray<Fingering>> PlanBest(
        Line line,
        Player player,
        int count,
        FingeringAim aim = FingeringAim.LeastEffort
    ) =>
        FretLayers
            .Build(line, player)
            .Then(layers => Solve(new FretProblem(line, player, layers), count, aim));

    private static Outcome<ImmutableArray<Fingering>> Solve(FretProblem problem, int count, FingeringAim aim)
    {
        var layered = problem.Layered;
        var limit =
            aim == FingeringAim.EasiestWorstMove
                ? LayeredSolver.LeastWorst(layered) + LayeredSolver.Tolerance
                : double.PositiveInfinity;
        var paths = LayeredSolver.Best(layered, count, limit);
        return paths.Count == 0 ? problem.BrokenPair() : paths.Select(problem.FingeringOf).ToImmutableArray();
    }
}
