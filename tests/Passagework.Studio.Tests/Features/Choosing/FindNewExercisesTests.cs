using Passagework.Choosing.Discovery;
using Passagework.Foundation;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Tests.Features.Choosing;

public sealed class FindNewExercisesTests
{
    private static readonly Asked Two = new() { Picked = ["groups-of-five", "groups-of-three"] };

    // What `passagework discover --length 4 --boxes 1,2 --count 3` finds.
    [Fact]
    public async Task A_search_finds_what_the_command_line_finds_and_a_find_becomes_an_exercise()
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(Two);
        using var search = room.Feature<FindNewExercises>()
            .Begin(weighing, Two, new SearchWish(4, [1, 2], 3));
        var found = (await search.Result).OrThrow();
        var space = CellSpace.Usual(4);
        var expected = Discoverer
            .Find(
                new DiscoveryQuestion
                {
                    Space = space with { Layouts = space.Layouts[..2] },
                    Player = weighing.Question.Player,
                    Music = weighing.Question.Pieces,
                    Count = 3,
                },
                stop: TestContext.Current.CancellationToken
            )
            .OrThrow();

        Assert.Equal(expected.Found.Select(find => find.Name), found.Found.Select(find => find.Name));
        Assert.Equal((2_744, 3), (found.Visited, found.Found.Length));
        Assert.InRange(search.Progress.Visited, 2_700, 2_744);
        var words = OpenFind.Words(found.Found[0]);
        Assert.Equal(
            ["Even load", "General use", "Staying power", "Use in music"],
            words.Select(word => word.Title)
        );

        var kept = Assert.IsType<ChangeAnswer.Kept>(
            await room.Feature<OpenFind>().Open(found.Found[0], TestContext.Current.CancellationToken)
        );
        Assert.Equal(NumberWords.Sentence(found.Found[0].Name), kept.Exercise.Title);
        Assert.Equal(found.Found[0].Recipe.Cell, kept.Exercise.Recipe.Cell);
        Assert.False(kept.Exercise.OnShelf);
    }

    [Fact]
    public async Task A_third_search_waits_for_one_of_two_to_be_stopped()
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(Two);
        var find = room.Feature<FindNewExercises>();
        var wish = new SearchWish(8, [1, 2, 3, 4, 5], 3);
        using var first = find.Begin(weighing, Two, wish);
        using var second = find.Begin(weighing, Two, wish);
        await Until(() => !first.IsWaiting && !second.IsWaiting);
        using var third = find.Begin(weighing, Two, wish);
        await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.True(third.IsWaiting);

        first.Stop();
        await Until(() => !third.IsWaiting);
        Assert.False((await first.Result).OrThrow().Complete);
        third.Stop();
        second.Stop();
        await Task.WhenAll(second.Result, third.Result);

        using var fourth = find.Begin(weighing, Two, wish with { Length = 3 });
        Assert.True((await fourth.Result).OrThrow().Complete);
    }

    [Fact]
    public void What_cannot_be_searched_is_said()
    {
        var wish = new SearchWish(4, [1], 3);
        var rhythm = Two with { Weights = Two.Weights.Clear().Add("rhythmic-ambiguity", 100) };

        Assert.Null(FindNewExercises.Refusal(Two, wish));
        Assert.Equal("the boxes", FindNewExercises.Refusal(Two, wish with { Boxes = [] })?.Where);
        Assert.Equal(
            "even load or general use or staying power or use in music above 0",
            FindNewExercises.Refusal(rhythm, wish)?.Right
        );
    }

    private static async Task Until(Func<bool> happened)
    {
        while (!happened())
            await Task.Delay(20, TestContext.Current.CancellationToken);
    }
}
