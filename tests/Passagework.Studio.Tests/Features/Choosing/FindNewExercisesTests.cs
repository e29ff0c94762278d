using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Studio.Data;
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
        var finds = KeptFinds.Of(found, Two, new SearchWish(4, [1, 2], 3));
        var words = OpenFind.Words(finds.Found[0]);
        Assert.Equal(
            ["Even load", "General use", "Staying power", "Use in music"],
            words.Select(word => word.Title)
        );

        var kept = Assert.IsType<ChangeAnswer.Kept>(
            await room.Feature<OpenFind>()
                .Open(finds, finds.Found[0], default, TestContext.Current.CancellationToken)
        );
        Assert.Equal(NumberWords.Sentence(found.Found[0].Name), kept.Exercise.Title);
        Assert.Equal(found.Found[0].Recipe.Cell, kept.Exercise.Recipe.Cell);
        Assert.False(kept.Exercise.OnShelf);
    }

    // Bb dorian: its 7th note Ab lies at 6:4, its second C at 6:8; Db at 6:11 over a low D; Bb at 6:6.
    [Theory]
    [InlineData("box", "standard", 7, "6:4")]
    [InlineData("joined", "standard", 2, "6:8")]
    [InlineData("per-string", "drop D", 3, "6:11")]
    [InlineData("diagonal", "all fourths", 1, "6:6")]
    public async Task A_search_goes_through_the_scale_key_position_and_tuning_that_are_asked_for(
        string kind,
        string tuning,
        int box,
        string from
    )
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(Two);
        var wish = new SearchWish(3, [box], 3)
        {
            Root = "Bb",
            Scale = "dorian",
            Kind = kind,
            Near = 8,
            Tuning = tuning,
        };
        Assert.Null(FindNewExercises.Refusal(Two, wish));
        using var search = room.Feature<FindNewExercises>().Begin(weighing, Two, wish);
        var found = (await search.Result).OrThrow();

        Assert.Equal((4 * 49, 4 * 49, 3), (found.Visited, found.Total, found.Found.Length));
        Assert.All(
            found.Found,
            find =>
            {
                Assert.Equal(("Bb", "dorian"), (find.Recipe.Notes!.Root.ToString(), find.Recipe.Notes.Scale));
                Assert.Equal(tuning, find.Recipe.Instrument.Tuning.Text);
                var laid = LayoutPlanner
                    .Lay(find.Recipe.Layout!, find.Recipe.Notes, find.Recipe.Instrument)
                    .OrThrow();
                Assert.Equal(from, laid.Places[0].ToString());
            }
        );
    }

    [Fact]
    public async Task What_was_found_is_there_until_it_is_thrown_away_and_is_named_by_the_room()
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(Two);
        var wish = new SearchWish(4, [1, 2], 3);
        using var search = room.Feature<FindNewExercises>().Begin(weighing, Two, wish);
        var finds = KeptFinds.Of((await search.Result).OrThrow(), Two, wish);
        var keeping = room.Feature<KeepFinds>();
        var stop = TestContext.Current.CancellationToken;

        Assert.Null(await keeping.Read(stop));
        Assert.Null(await keeping.Keep(finds, stop));
        var read = await keeping.Read(stop);

        Assert.NotNull(read);
        Assert.Equal(finds.Wish, read.Wish);
        Assert.Equal((finds.Visited, finds.Front), (read.Visited, read.Front));
        Assert.Equal(finds.Found.Select(find => find.Idea), read.Found.Select(find => find.Idea));
        Assert.Equal(finds.Found.Select(OpenFind.Words), read.Found.Select(OpenFind.Words));
        var other = new RoomStyle { Boxes = BoxNumbering.WithRootBox(4) };
        Assert.Equal(
            read.Found.Select(find => read.NameOf(find, default).OrThrow()).Select(Renumbered),
            read.Found.Select(find => read.NameOf(find, other).OrThrow())
        );

        Assert.Null(await keeping.ThrowAway(stop));
        Assert.Null(await keeping.Read(stop));
    }

    [Theory]
    [InlineData("[0.5,0.5,0.5,0.5]", true)]
    [InlineData("[]", false)]
    public async Task Finds_without_values_are_not_shown(string values, bool isRead)
    {
        const string Idea =
            """{\"passagework\":1,\"notes\":{\"root\":\"A\",\"scale\":\"minor pentatonic\"},\"layout\":{\"kind\":\"box\"},\"cell\":{\"offsets\":[0,1,2]}}""";
        await using var room = await Room.Open();
        var kept = $$"""
            {"wish":{"length":3,"boxes":[1],"count":3},"asked":{},"visited":1,"total":1,"front":1,"found":[{"idea":"{{Idea}}","values":{{values}}}]}
            """;
        await room.Add(new SettingRow { Name = "Finds", Value = kept });
        Assert.Equal(
            isRead,
            await room.Feature<KeepFinds>().Read(TestContext.Current.CancellationToken) is not null
        );
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("not json")]
    [InlineData(
        """{"wish":{"length":4,"boxes":[9],"count":3},"asked":{},"visited":1,"total":1,"front":1,"found":[{"idea":"{}","values":[]}]}"""
    )]
    public async Task Kept_finds_that_cannot_be_read_are_as_none(string kept)
    {
        await using var room = await Room.Open();
        await room.Add(new SettingRow { Name = "Finds", Value = kept });
        Assert.Null(await room.Feature<KeepFinds>().Read(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Another_scale_leaves_out_the_boxes_that_it_has_not()
    {
        var seven = SearchWish.Usual.In("major") with { Boxes = [1, 6, 7] };

        Assert.Equal(7, seven.BoxesOfScale);
        Assert.Equal([1], seven.In("minor pentatonic").Boxes);
        Assert.Equal([1, 2, 3], (seven with { Boxes = [6, 7] }).In("minor triad").Boxes);
    }

    // Box 1 is the fourth to this teacher, box 2 the fifth.
    private static string Renumbered(string name) =>
        name.Replace("box 2", "box 5", StringComparison.Ordinal)
            .Replace("box 1", "box 4", StringComparison.Ordinal);

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
        Assert.Equal("the scale", FindNewExercises.Refusal(Two, wish with { Scale = "no such" })?.Where);
        Assert.Equal("the search", FindNewExercises.Refusal(Two, wish with { Near = 40 })?.Where);
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
