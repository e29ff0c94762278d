using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class SetCoverTests
{
    // P = 1-6, Q = 7-12, A = {1,2,3,7,8,9,10}, B = {4,5,11}, C = {6,12}: worked by hand.
    private static readonly UInt128[] Worked =
    [
        Set(1, 2, 3, 4, 5, 6),
        Set(7, 8, 9, 10, 11, 12),
        Set(1, 2, 3, 7, 8, 9, 10),
        Set(4, 5, 11),
        Set(6, 12),
    ];

    [Fact]
    public void Greedy_takes_three_where_two_are_enough()
    {
        Assert.Equal([2, 0, 1], Greedy(Worked));
        Assert.Equal(2.5929, GreedyCover.Factor(7), 0.00005);
        Assert.Equal([0, 1], Solve(Worked).Taken);
    }

    [Fact]
    public void Of_equal_sets_the_first_is_taken()
    {
        Assert.Equal([0], Solve([Set(1, 2), Set(1, 2), Set(2)]).Taken);
        Assert.Equal([0], Greedy([Set(1, 2), Set(1, 2)]));
    }

    [Fact]
    public void Nothing_to_cover_takes_nothing()
    {
        Assert.Empty(Solve([]).Taken);
        Assert.Empty(Solve([0, 0]).Taken);
    }

    [Fact]
    public void The_smallest_cover_equals_exhaustive_search_on_five_hundred_cases()
    {
        var random = new Random(5);
        for (var i = 0; i < 500; i++)
        {
            var sets = Random(
                random,
                random.Next(1, 13),
                random.Next(1, 20),
                0.05 + (random.NextDouble() * 0.6)
            );

            var (taken, isProved, _) = Solve(sets);

            Assert.True(isProved);
            Assert.Equal(Union(sets, Enumerable.Range(0, sets.Length)), Union(sets, taken));
            Assert.Equal(FewestOf(sets), taken.Length);
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.12)]
    [InlineData(0.2)]
    [InlineData(0.4)]
    public void Sixty_four_sets_of_a_hundred_and_twenty_eight_are_proved(double share)
    {
        var sets = Random(new Random(9), 64, 128, share);

        var (taken, isProved, nodes) = Solve(sets);

        Assert.True(isProved);
        Assert.InRange(nodes, 1, 100_000);
        Assert.True(taken.Length <= Greedy(sets).Count);
        Assert.Equal(Union(sets, Enumerable.Range(0, 64)), Union(sets, taken));
    }

    [Fact]
    public void A_search_that_is_cut_short_keeps_what_it_has_and_says_so()
    {
        var sets = Random(new Random(9), 64, 128, 0.2);

        var cut = SetCover.Solve(sets, Greedy(sets), 10, CancellationToken.None);
        var stopped = SetCover.Solve(sets, Greedy(sets), 1_000_000, new CancellationToken(canceled: true));

        Assert.False(cut.IsProved);
        Assert.False(stopped.IsProved);
        Assert.Equal(Greedy(sets).Order(), stopped.Taken);
    }

    [Fact]
    public void The_bound_never_says_more_than_the_smallest_cover()
    {
        var random = new Random(11);
        for (var i = 0; i < 300; i++)
        {
            var sets = Random(random, random.Next(1, 11), random.Next(1, 16), 0.4);
            var all = Union(sets, Enumerable.Range(0, sets.Length));
            var holders = Enumerable
                .Range(0, SetCover.MostElements)
                .Select(element =>
                    Enumerable
                        .Range(0, sets.Length)
                        .Where(set => ((sets[set] >> element) & 1) == 1)
                        .Aggregate(0UL, (bits, set) => bits | (1UL << set))
                )
                .ToArray();

            var bound = CoverBound.Of(all, ulong.MaxValue, sets, holders);

            Assert.InRange(bound, all == 0 ? 0 : 1, FewestOf(sets));
        }
    }

    private static (System.Collections.Immutable.ImmutableArray<int> Taken, bool IsProved, int Nodes) Solve(
        UInt128[] sets
    ) => SetCover.Solve(sets, Greedy(sets), 1_000_000, CancellationToken.None);

    private static List<int> Greedy(UInt128[] sets) =>
        GreedyCover.Of([.. sets.Select(set => SetCover.Bits(set).ToHashSet())]);

    // Every choice of sets.
    private static int FewestOf(UInt128[] sets)
    {
        var all = Union(sets, Enumerable.Range(0, sets.Length));
        return Enumerable
            .Range(0, 1 << sets.Length)
            .Where(choice => Union(sets, SetCover.Bits((UInt128)choice)) == all)
            .Min(choice => int.PopCount(choice));
    }

    private static UInt128 Union(UInt128[] sets, IEnumerable<int> taken) =>
        taken.Aggregate(UInt128.Zero, (union, set) => union | sets[set]);

    private static UInt128[] Random(Random random, int sets, int elements, double share) =>
        [
            .. Enumerable
                .Range(0, sets)
                .Select(_ =>
                    Enumerable
                        .Range(0, elements)
                        .Where(_ => random.NextDouble() < share)
                        .Aggregate(UInt128.Zero, (set, element) => set | (UInt128.One << element))
                ),
        ];

    private static UInt128 Set(params int[] elements) =>
        elements.Aggregate(UInt128.Zero, (set, element) => set | (UInt128.One << element));
}
