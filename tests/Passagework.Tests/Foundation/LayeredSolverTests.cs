using CsCheck;
using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public class LayeredSolverTests
{
    // Small whole costs and ties, so that equal ways are common.
    private static readonly Gen<LayeredProblem> Problems =
        from states in Gen.Int[1, 3].Array[1, 4]
        from costs in Gen.Frequency((6, Gen.Int[0, 3]), (1, Gen.Const(-1))).Array[36]
        from ties in Gen.Int[0, 2].Array[36]
        select Problem(states, costs, ties);

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Best_ways_equal_exhaustive_search_in_order(int count) =>
        Problems.Sample(
            problem =>
                Assert.Equal(
                    Exhaustive(problem, count),
                    LayeredSolver.Best(problem, count).Select(way => string.Join(' ', way.States))
                ),
            iter: 3000
        );

    [Fact]
    public void Equal_costs_are_told_apart_by_ties_and_then_by_the_lower_state()
    {
        // Three ways of cost 1; the last two have the smaller tie.
        var step = new LayeredStep(1, 3, [1, 1, 1], [5, 2, 2]);
        var problem = new LayeredProblem([0], [0], [step], [1], [new double[3]]);

        Assert.Equal(
            [
                [0, 1],
                [0, 2],
                [0, 0],
            ],
            LayeredSolver.Best(problem, 3).Select(way => way.States)
        );
    }

    [Fact]
    public void Costs_within_the_tolerance_are_equal()
    {
        var step = new LayeredStep(1, 2, [1, 1 + 5e-10], [1, 0]);
        var problem = new LayeredProblem([0], [0], [step], [1], [new double[2]]);

        Assert.Equal([0, 1], LayeredSolver.Best(problem)[0].States);
    }

    [Fact]
    public void Arcs_above_the_limit_are_left_out()
    {
        var step = new LayeredStep(1, 2, [4, 3], [0, 0]);
        var problem = new LayeredProblem(
            [0],
            [0],
            [step],
            [2],
            [
                [0, 9],
            ]
        );

        Assert.Equal([0, 0], LayeredSolver.Best(problem)[0].States);
        Assert.Equal(6, LayeredSolver.LeastWorst(problem));
        Assert.Equal([0, 1], LayeredSolver.Best(problem, limit: 6)[0].States);
        Assert.Empty(LayeredSolver.Best(problem, limit: 5));
    }

    [Fact]
    public void First_broken_step_is_named()
    {
        var whole = new LayeredStep(1, 1, [1], [0]);
        var broken = new LayeredStep(1, 1, [double.PositiveInfinity], [0]);
        var extras = new double[][] { [0], [0], [0] };

        Assert.Equal(
            1,
            LayeredSolver.FirstBroken(new LayeredProblem([0], [0], [whole, broken, whole], [1, 1, 1], extras))
        );
        Assert.Null(
            LayeredSolver.FirstBroken(new LayeredProblem([0], [0], [whole, whole, whole], [1, 1, 1], extras))
        );
    }

    private static LayeredProblem Problem(int[] states, int[] costs, int[] ties)
    {
        var next = 0;
        double Cost() => costs[next++ % costs.Length] is >= 0 and var cost ? cost : double.PositiveInfinity;
        var steps = states
            .Zip(states.Skip(1))
            .Select(pair => new LayeredStep(
                pair.First,
                pair.Second,
                [.. Enumerable.Range(0, pair.First * pair.Second).Select(_ => Cost())],
                [.. Enumerable.Range(0, pair.First * pair.Second).Select(i => (long)ties[i])]
            ))
            .ToArray();
        return new LayeredProblem(
            [.. Enumerable.Range(0, states[0]).Select(_ => Cost())],
            [.. Enumerable.Range(0, states[0]).Select(i => (long)ties[^(i + 1)])],
            steps,
            [.. steps.Select(_ => 1.0)],
            [.. steps.Select(step => new double[step.To])]
        );
    }

    private static IEnumerable<string> Exhaustive(LayeredProblem problem, int count)
    {
        var ways = Enumerable
            .Range(0, problem.StartCosts.Length)
            .Select(i => (States: new[] { i }, Cost: problem.StartCosts[i], Tie: problem.StartTies[i]));
        foreach (var step in problem.Steps)
        {
            ways = ways.SelectMany(way =>
                Enumerable
                    .Range(0, step.To)
                    .Select(j =>
                    {
                        var arc = (way.States[^1] * step.To) + j;
                        return (
                            (int[])[.. way.States, j],
                            way.Cost + step.Costs[arc],
                            way.Tie + step.Ties[arc]
                        );
                    })
            );
        }

        return ways.Where(way => way.Cost < double.PositiveInfinity)
            .OrderBy(way => (way.Cost, way.Tie))
            .Take(count)
            .Select(way => string.Join(' ', way.States))
            .ToArray();
    }
}
