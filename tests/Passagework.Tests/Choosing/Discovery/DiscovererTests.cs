using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Tests.Choosing.Discovery;

public class DiscovererTests
{
    private static readonly Layout BoxOne = new Layout.Box(1, 5);

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    public void Any_number_of_threads_gives_the_same_answer(int threads)
    {
        var question = Spaces.Question(4, BoxOne, new Layout.Box(4, 5));
        Assert.Equal(Told(Found(question)), Told(Found(question with { Threads = threads })));
    }

    [Fact]
    public void Every_candidate_is_visited_and_counted_once()
    {
        var question = Spaces.Question(4, [.. CellSpace.Usual(4).Layouts]);
        var result = Found(question);

        Assert.Equal(6_860, result.Total);
        Assert.Equal(6_860, result.Visited);
        Assert.True(result.Complete);
        Assert.Equal(5, result.Found.Length);
        Assert.Equal(5, result.Found.Select(found => found.Name).Distinct().Count());
    }

    [Theory]
    [InlineData("string-pair", 4)]
    [InlineData("one-side", 5)]
    public void What_filters_remove_adds_up(string kind, int length)
    {
        var question = Spaces.Question(length, Spaces.OfKind(kind)) with
        {
            Filters = new DiscoveryFilters
            {
                NoRolls = true,
                MaxStretch = 2,
                MinCeiling = 4,
            },
        };
        var plan = Spaces.Plan(question);
        var parts = Discoverer.Search(plan, 2);
        var removed = new long[parts[0].Removed.Length];
        foreach (var part in parts)
        {
            removed = [.. removed.Zip(part.Removed, (a, b) => a + b)];
        }

        var all = Spaces.All(plan);
        var fitting = all.Count;
        Assert.Equal(plan.Space.Total - fitting, removed[(int)Removal.TooWide]);
        var seen = new HashSet<string>();
        var kept = all.Where(one =>
                seen.Add(one.Line) && one.Take is { Rolls: 0, Stretch: <= 2, LeastCeiling: >= 4 }
            )
            .ToList();
        Assert.Equal(plan.Space.Total, parts.Sum(part => part.Visited));
        Assert.Equal(kept.Count, plan.Space.Total - removed.Sum());
        var front = new CellFront(plan.Criteria);
        foreach (var (number, _, take) in kept)
        {
            front.Offer(number, take);
        }

        Assert.Equal(
            front.InOrder.Select(entry => entry.Number),
            Discoverer.Merged(plan, parts).InOrder.Select(entry => entry.Number)
        );
    }

    [Fact]
    public void The_ceiling_at_the_nodes_removes_only_what_the_leaves_would()
    {
        var question = Spaces.Question(4, BoxOne) with
        {
            Filters = new DiscoveryFilters { MinCeiling = 4.7 },
        };
        var plan = Spaces.Plan(question);
        var slow = Spaces.All(plan).Count(one => one.Take.LeastCeiling < 4.7);

        var result = Found(question);

        Assert.InRange(slow, 1, (int)result.Total - 1);
        Assert.Equal(slow, result.Removed[Removal.Ceiling]);
    }

    [Fact]
    public void A_search_that_is_stopped_gives_what_it_visited()
    {
        using var stop = new CancellationTokenSource();
        var progress = new StopAt(stop, 400);
        var question = Spaces.Question(4, BoxOne);

        var result = Discoverer.Find(question, progress, stop.Token).OrThrow();

        Assert.False(result.Complete);
        Assert.InRange(result.Visited, 400, result.Total - 1);
        Assert.NotEmpty(result.Found);
        Assert.Equal(result.Total, progress.Total);
    }

    [Fact]
    public void Progress_counts_what_is_kept_until_it_is_the_front()
    {
        var progress = new KeptSoFar();
        var question = Spaces.Question(4, [.. CellSpace.Usual(4).Layouts]);

        var result = Discoverer.Find(question, progress, TestContext.Current.CancellationToken).OrThrow();

        Assert.Equal(0, progress.Kept[0]);
        Assert.InRange(progress.Kept[^1], result.Front / 2, 2 * result.Front);
    }

    [Fact]
    public void A_search_stopped_before_it_began_found_nothing()
    {
        var result = Discoverer.Find(Spaces.Question(4, BoxOne), stop: new CancellationToken(true)).OrThrow();

        Assert.Equal((0L, 0), (result.Visited, result.Front));
        Assert.Empty(result.Found);
        Assert.False(result.Complete);
    }

    [Fact]
    public void Filters_that_leave_nothing_say_what_they_removed()
    {
        var result = Found(
            Spaces.Question(3, BoxOne) with
            {
                Filters = new DiscoveryFilters { MinCeiling = 50 },
            }
        );

        Assert.Empty(result.Found);
        Assert.True(result.Complete);
        Assert.Equal(result.Total, result.Removed[Removal.Ceiling]);
    }

    [Fact]
    public void A_question_without_an_answer_is_refused()
    {
        var question = Spaces.Question(4, BoxOne);

        Assert.Equal(
            "2 is out of range",
            Refused(question with { Space = question.Space with { Length = 2 } })
        );
        Assert.Equal(
            "4 is out of range",
            Refused(question with { Space = question.Space with { Step = 4 } })
        );
        Assert.Equal("0 is out of range", Refused(question with { Threads = 0 }));
        Assert.Equal(
            "nothing to search",
            Refused(question with { Space = question.Space with { Layouts = [] } })
        );
        Assert.Equal(
            "no criterion that counts tells cells apart here",
            Refused(
                question with
                {
                    Music = null,
                    Weights = question.Weights.RemoveRange(["even-load", "staying-power"]),
                }
            )
        );
        Assert.NotNull(Refused(Spaces.Question(4, new Layout.Box(9, 5))));
    }

    [Fact]
    public void Without_music_the_rest_is_compared()
    {
        var result = Found(Spaces.Question(3, BoxOne) with { Music = null });

        Assert.NotEmpty(result.Found);
        Assert.All(result.Found, found => Assert.Null(found.Raw.GeneralUse));
        Assert.All(result.Found, found => Assert.NotNull(found.Raw.EvenLoad));
    }

    [Fact]
    public void A_find_that_stands_on_the_shelf_says_so()
    {
        // Only cells of three steps up or down: threes are among them.
        var space = CellSpace.Usual(3) with
        {
            Layouts = [new Layout.Box(2, 5)],
            Reach = 1,
        };
        var result = Found(
            Spaces.Question(3, BoxOne) with
            {
                Space = space,
                Count = 50,
                Weights = Spaces.Question(3, BoxOne).Weights.SetItem("even-load", 0),
            }
        );

        Assert.All(
            result.Found,
            found => Assert.Equal(found.LibraryId, LibraryTwin.Of(found.Recipe with { Title = null }))
        );
        Assert.Equal(
            "groups-of-three-down",
            LibraryTwin.Of(space.RecipeOf(space.Layouts[0], Direction.Down, FirstStroke.Up, [0, 1, 2]))
        );
        Assert.Null(
            LibraryTwin.Of(space.RecipeOf(space.Layouts[0], Direction.Up, FirstStroke.Up, [0, 1, 1]))
        );
    }

    private static DiscoveryResult Found(DiscoveryQuestion question) => Discoverer.Find(question).OrThrow();

    private static string? Refused(DiscoveryQuestion question) =>
        Discoverer.Find(question).TryGet(out _, out var fault) ? null : fault.What;

    private static string Told(DiscoveryResult result) =>
        string.Join(
            '\n',
            result
                .Found.Select(found => $"{found.Name} {found.Raw} {string.Join(' ', found.Errors)}")
                .Append($"{result.Front} {result.Equal} {result.Visited}")
                .Concat(result.Removed.OrderBy(pair => pair.Key).Select(pair => $"{pair.Key} {pair.Value}"))
        );

    private sealed class KeptSoFar : IProgress<DiscoveryProgress>
    {
        public List<int> Kept { get; } = [];

        public void Report(DiscoveryProgress value) => Kept.Add(value.Kept);
    }

    private sealed class StopAt(CancellationTokenSource stop, long visited) : IProgress<DiscoveryProgress>
    {
        public long Total { get; private set; }

        public void Report(DiscoveryProgress value)
        {
            Total = value.Total;
            if (value.Visited >= visited)
            {
                stop.Cancel();
            }
        }
    }
}
