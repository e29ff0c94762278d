using CsCheck;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Tests.Choosing.Discovery;

public class CellFrontTests
{
    public static TheoryData<string, int> Kinds
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var kind in LayoutChoice.Kinds)
            {
                data.Add(kind, 3);
                data.Add(kind, 4);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_streamed_front_equals_every_pair_compared(string kind, int length)
    {
        var plan = Spaces.Plan(Spaces.Question(length, Spaces.OfKind(kind)));
        var streamed = Discoverer.Merged(plan, Discoverer.Search(plan, 2));

        var seen = new HashSet<string>();
        var all = Spaces.All(plan).Where(one => seen.Add(one.Line)).ToList();
        Assert.Equal(
            all.Where(one => !all.Exists(other => Beats(other.Take, one.Take)))
                .GroupBy(one =>
                    (one.Take.EvenLoad, one.Take.GeneralUse, one.Take.StayingPower, one.Take.UseInMusic)
                )
                .Select(alike => (alike.Min(one => one.Number), alike.Count() - 1L))
                .Order(),
            streamed.InOrder.Select(entry => (entry.Number, entry.Alike))
        );
    }

    [Fact]
    public void Random_streams_keep_what_no_pair_beats_and_count_equals() =>
        Gen.Int[0, 3]
            .Array[4]
            .Array[1, 60]
            .Sample(rows =>
            {
                var front = new CellFront(All(4));
                for (var at = 0; at < rows.Length; at++)
                {
                    front.Offer(at, Take(rows[at][0], rows[at][1], rows[at][2], rows[at][3]));
                }

                var kept = Enumerable
                    .Range(0, rows.Length)
                    .Where(a => !rows.Any(other => Beats(other, rows[a])))
                    .GroupBy(a => string.Join(' ', rows[a]))
                    .Select(alike => ((long)alike.Min(), alike.Count() - 1L))
                    .Order();
                Assert.Equal(kept, front.InOrder.Select(entry => (entry.Number, entry.Alike)));
            });

    [Fact]
    public void Less_is_better_where_anchors_run_downwards()
    {
        var front = new CellFront([new ComparedMeasure(0, -1)]);
        front.Offer(0, Take(0.5, 0, 0, 0));
        front.Offer(1, Take(0.4, 0, 0, 0));
        Assert.Equal([1L], front.InOrder.Select(entry => entry.Number));
    }

    // A(n,1) = 1, A(n,d) = sum over k up to n of A(k,d-1)/k: 104.4 and 304.9 are given for (10^6, 3) and (10^5, 4).
    [Theory]
    [InlineData(3, 5_000, 0.12)]
    [InlineData(4, 5_000, 0.12)]
    public void Fronts_of_random_points_are_as_large_as_expected(int measures, int points, double tolerance)
    {
        const int runs = 12;
        var chance = new SplitMix64(7);
        var sizes = 0;
        for (var run = 0; run < runs; run++)
        {
            var front = new CellFront(All(measures));
            for (var at = 0; at < points; at++)
            {
                front.Offer(
                    at,
                    Take(
                        chance.NextUniform(),
                        chance.NextUniform(),
                        chance.NextUniform(),
                        chance.NextUniform()
                    )
                );
            }

            sizes += front.Count;
        }

        var expected = Expected(points, measures);
        Assert.Equal(expected, (double)sizes / runs, expected * tolerance);
    }

    [Fact]
    public void The_expected_size_is_the_known_one()
    {
        Assert.Equal(73.9, Expected(100_000, 3), 0.1);
        Assert.Equal(304.9, Expected(100_000, 4), 0.1);
    }

    private static double Expected(int points, int measures)
    {
        var sizes = Enumerable.Repeat(1.0, points + 1).ToArray();
        for (var d = 2; d <= measures; d++)
        {
            var sum = 0.0;
            for (var k = 1; k <= points; k++)
            {
                sum += sizes[k] / k;
                sizes[k] = sum;
            }
        }

        return sizes[points];
    }

    private static ComparedMeasure[] All(int measures) =>
        [.. Enumerable.Range(0, measures).Select(k => new ComparedMeasure(k, 1))];

    private static CellTake Take(double even, double general, double staying, double use) =>
        new()
        {
            EvenLoad = even,
            GeneralUse = general,
            StayingPower = staying,
            UseInMusic = use,
        };

    private static bool Beats(CellTake one, CellTake other) =>
        Beats(
            [one.EvenLoad, one.GeneralUse, one.StayingPower, one.UseInMusic],
            new[] { other.EvenLoad, other.GeneralUse, other.StayingPower, other.UseInMusic }
        );

    private static bool Beats<T>(T[] one, T[] other)
        where T : IComparable<T> =>
        one.Zip(other).All(pair => pair.First.CompareTo(pair.Second) >= 0)
        && one.Zip(other).Any(pair => pair.First.CompareTo(pair.Second) > 0);
}
