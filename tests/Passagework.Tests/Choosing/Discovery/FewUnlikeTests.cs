using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Tests.Choosing.Discovery;

public class FewUnlikeTests
{
    // Scores and likenesses of the worked example of marginal relevance, E1 to E5, lambda 0.7.
    private static readonly double[] Scores = [0.59483, 0.61250, 0.59000, 0.65167, 0.50583];

    private static readonly double[][] Alike =
    [
        [1, 0.60, 0.25, 0.30, 0.20],
        [0.60, 1, 0.15, 0.70, 0.10],
        [0.25, 0.15, 1, 0.20, 0.30],
        [0.30, 0.70, 0.20, 1, 0.10],
        [0.20, 0.10, 0.30, 0.10, 1],
    ];

    [Fact]
    public void Marginal_relevance_takes_the_fourth_the_third_and_the_first()
    {
        var chosen = new List<int>();
        MarginalRelevance.Add(Scores, (a, b) => Alike[a][b], chosen, [0, 1, 2, 3, 4], 3);
        Assert.Equal([3, 2, 0], chosen);
    }

    [Fact]
    public void More_are_added_unlike_those_chosen_already()
    {
        List<int> chosen = [3];
        MarginalRelevance.Add(Scores, (a, b) => Alike[a][b], chosen, [1, 2], 9);
        Assert.Equal([3, 2, 1], chosen);
    }

    [Fact]
    public void One_of_each_box_is_left_and_no_box_that_another_beats()
    {
        // Boxes of 0.1 on the first value, exact on the second: (7, 1) twice, (2, 3), (7, 0) which (7, 1) beats.
        double[][] values =
        [
            [0.71, 1],
            [0.79, 1],
            [0.25, 3],
            [0.75, 0],
        ];
        Assert.Equal([1, 2], Thinning.Of(values, [0.1, 0], [0.5, 0.6, 0.4, 0.9]));
        Assert.Equal([0, 2], Thinning.Of(values, [0.1, 0], [0.6, 0.6, 0.4, 0.9]));
    }

    [Theory]
    [InlineData(
        "0 4 3 3 1",
        Direction.Up,
        "five notes, a leap of four up, down one, the note again and a skip down; box 2, rising, first stroke up"
    )]
    [InlineData(
        "0 1 2 3 2",
        Direction.Up,
        "five notes, up three and down one; box 2, rising, first stroke up"
    )]
    [InlineData(
        "0 1 2 3 2",
        Direction.Down,
        "five notes, down three and up one; box 2, falling, first stroke up"
    )]
    [InlineData(
        "0 2 4 4 4",
        Direction.UpAndDown,
        "five notes, two skips up and the note two times more; box 2, up and down, first stroke up"
    )]
    public void Names_tell_the_shape(string cell, Direction direction, string name)
    {
        int[] offsets = [.. cell.Split(' ').Select(int.Parse)];
        var namer = new CellNamer(CellSpace.Usual(5));
        Assert.Equal(name, namer.Of(new Layout.Box(2, 5), direction, FirstStroke.Up, offsets));
    }

    [Fact]
    public void Names_of_all_candidates_differ()
    {
        var space = CellSpace.Usual(4) with
        {
            Layouts = [new Layout.Box(1, 5), new Layout.Box(1, 17), new Layout.Box(2, 5)],
        };
        var plan = Spaces.Plan(Spaces.Question(4, space.Layouts));
        var namer = new CellNamer(space);
        var names = new HashSet<string>();
        for (var number = 0L; number < space.Total; number++)
        {
            var (variant, first, offsets) = plan.Numbers.Read(number);
            var (layout, direction) = (plan.Variants[variant].Layout, plan.Variants[variant].Direction);
            Assert.True(names.Add(namer.Of(layout, direction, space.Firsts[first], offsets)));
        }
    }
}
