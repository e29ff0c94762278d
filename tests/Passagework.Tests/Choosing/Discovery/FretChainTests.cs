using CsCheck;
using Passagework.Choosing.Discovery;
using Passagework.Foundation;

namespace Passagework.Tests.Choosing.Discovery;

public class FretChainTests
{
    // Few different costs, some apart by less than what the solver tells apart, some arcs missing: ties everywhere.
    private static readonly Gen<double> Costs = Gen.Frequency(
        (4, Gen.Int[0, 2].Select(cost => (double)cost)),
        (3, Gen.Int[0, 5].Select(part => 1 + (part * 0.6e-9))),
        (1, Gen.Const(double.PositiveInfinity))
    );

    private static readonly Gen<(FretArcs Arcs, int[] Line)> Cases =
        from counts in Gen.Int[1, 9].Array[1, 4]
        let arcs = FretArcs.Of(counts)
        from costs in Costs.Array[arcs.Costs.Length]
        from ties in Gen.Int[0, 3].Array[arcs.Ties.Length]
        from starts in Gen.Int[0, 1].Array[arcs.StartCosts.Length]
        from line in Gen.Int[0, counts.Length - 1].Array[1, 12]
        select (Filled(arcs, costs, ties, starts), line);

    [Fact]
    public void The_chain_takes_the_same_way_as_the_solver() =>
        Cases.Sample(
            one =>
            {
                var (arcs, line) = one;
                var states = new int[line.Length];
                var found = new FretChain(line.Length, arcs.Width).Solve(arcs, line, states);

                var best = LayeredSolver.Best(Problem(arcs, line));
                Assert.Equal(best.Count > 0, found);
                if (found)
                {
                    Assert.Equal(
                        best[0].States,
                        states.Select((state, at) => state - (line[at] * arcs.Width))
                    );
                }
            },
            iter: 3_000
        );

    private static FretArcs Filled(FretArcs arcs, double[] costs, int[] ties, int[] starts)
    {
        for (var from = 0; from < arcs.Places; from++)
        {
            for (var to = 0; to < arcs.Places; to++)
            {
                for (var at = 0; at < arcs.Counts[from] * arcs.Counts[to]; at++)
                {
                    var arc =
                        arcs.Between(from, to)
                        + (at / arcs.Counts[from] * arcs.Width)
                        + (at % arcs.Counts[from]);
                    (arcs.Costs[arc], arcs.Ties[arc]) = (costs[arc], ties[arc]);
                }
            }
        }

        for (var at = 0; at < starts.Length; at++)
        {
            (arcs.StartCosts[at], arcs.StartTies[at]) = (starts[at], starts[^(at + 1)]);
        }

        return arcs;
    }

    private static LayeredProblem Problem(FretArcs arcs, int[] line)
    {
        var (start, count) = (line[0] * arcs.Width, arcs.Counts[line[0]]);
        var steps = line.Zip(line.Skip(1), (from, to) => StepOf(arcs, from, to)).ToList();
        return new LayeredProblem(
            arcs.StartCosts[start..(start + count)],
            arcs.StartTies[start..(start + count)],
            steps,
            [.. steps.Select(_ => 1.0)],
            [.. steps.Select(step => new double[step.To])]
        );
    }

    private static LayeredStep StepOf(FretArcs arcs, int from, int to)
    {
        var (earlier, later) = (arcs.Counts[from], arcs.Counts[to]);
        var (costs, ties) = (new double[earlier * later], new long[earlier * later]);
        for (var at = 0; at < costs.Length; at++)
        {
            var arc = arcs.Between(from, to) + (at % later * arcs.Width) + (at / later);
            (costs[at], ties[at]) = (arcs.Costs[arc], arcs.Ties[arc]);
        }

        return new LayeredStep(earlier, later, costs, ties);
    }
}
