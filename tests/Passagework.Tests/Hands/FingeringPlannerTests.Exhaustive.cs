using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands;

/// <summary>The planner against its slow twin: every sequence of states tried.</summary>
public partial class FingeringPlannerTests
{
    private static readonly Gen<(Line Line, Player Player)> Cases = Gen.Select(
        LineGen.Of(Technique.Alternate, most: 4),
        Gen.Double[0, 4],
        Gen.Int[0, 2],
        (line, level, size) => (line, Player.At(level) with { HandSize = 0.85 + (0.15 * size) })
    );

    // The best one, the best for the worst move, the best few.
    [Theory]
    [InlineData(FingeringAim.LeastEffort, 1, 2500)]
    [InlineData(FingeringAim.EasiestWorstMove, 1, 2000)]
    [InlineData(FingeringAim.LeastEffort, 4, 2000)]
    public void Plan_equals_exhaustive_search(FingeringAim aim, int count, int cases) =>
        Cases.Sample(
            pair => Assert.Equal(Twin(pair.Line, pair.Player, aim, count), Ours(pair, aim, count)),
            iter: cases
        );

    [Fact]
    public void Two_runs_give_the_same_fingering() =>
        Cases.Sample(pair =>
            Assert.Equal(Ours(pair, FingeringAim.LeastEffort, 3), Ours(pair, FingeringAim.LeastEffort, 3))
        );

    private static string Ours((Line Line, Player Player) pair, FingeringAim aim, int count) =>
        FingeringPlanner.PlanBest(pair.Line, pair.Player, count, aim)
            is Outcome<System.Collections.Immutable.ImmutableArray<Fingering>>.Done done
            ? string.Join(
                " / ",
                done.Value.Select(fingering => Text(fingering.Notes.Select(note => note.State)))
            )
            : "none";

    private static string Text(IEnumerable<FretState> states) =>
        string.Join(
            ' ',
            states.Select(state =>
                ChordMoves
                    .Tones(state)
                    .Aggregate(
                        FormattableString.Invariant($"@{state.Position}"),
                        (text, tone) => FormattableString.Invariant($"{text} {tone.Place}={tone.Finger}")
                    )
            )
        );

    private static string Twin(Line line, Player player, FingeringAim aim, int count)
    {
        var search = new FingeringSearch(line, player);
        search.Run();
        var ways = search.Found;
        if (ways.Count == 0)
        {
            return "none";
        }

        if (aim == FingeringAim.EasiestWorstMove)
        {
            var least = ways.Min(way => way.Worst);
            ways = ways.FindAll(way => way.Worst <= least + LayeredSolver.Tolerance);
        }

        var best = new List<string>();
        while (best.Count < count && ways.Count > 0)
        {
            var cheapest = ways.Min(way => way.Cost);
            var next = ways.Where(way => way.Cost <= cheapest + LayeredSolver.Tolerance)
                .OrderBy(way => (way.Shifts, way.Deviation, way.Effort))
                .First();
            best.Add(Text(next.States));
            ways.Remove(next);
        }

        return string.Join(" / ", best);
    }
}
