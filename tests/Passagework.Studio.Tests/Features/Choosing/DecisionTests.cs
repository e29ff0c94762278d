using Passagework.Studio.Data;
using Passagework.Studio.Features.Choosing;

namespace Passagework.Studio.Tests.Features.Choosing;

public sealed class DecisionTests
{
    private static readonly Asked Question = new()
    {
        Picked = ["groups-of-five", "groups-of-three"],
        Level = 3.5,
        Avoid = [4],
        Technique = Passagework.Exercises.Technique.Economy,
        Purpose = "before bar 12",
        LeastTempo = 2.5,
        Feel = "4-swung",
        OwnMusic = true,
    };

    [Fact]
    public async Task A_decision_is_kept_with_its_question_and_comes_back_whole_after_being_thrown_away()
    {
        await using var room = await Room.Open();
        var asked = Question with { OwnMusic = false, LeastTempo = null, Feel = null };
        var answer = await room.Weigh(asked);
        Assert.Null(
            await room.Feature<KeepDecision>()
                .Keep(asked, answer, answer.Exercises[1], "  because ", TestContext.Current.CancellationToken)
        );

        var kept = Assert.Single(
            await room.Feature<ListDecisions>().List(TestContext.Current.CancellationToken)
        );
        Assert.Equal((answer.Exercises[1].Title, "because"), (kept.Title, kept.Reason));
        Assert.Equal(answer.Explanation.Verdict, kept.Verdict);
        var gone = await room.Feature<ThrowAwayDecision>()
            .ThrowAway(kept.Id, TestContext.Current.CancellationToken);
        Assert.Empty(await room.Feature<ListDecisions>().List(TestContext.Current.CancellationToken));
        Assert.Null(await gone.OrThrow().BringBack());
        Assert.Equal(
            kept,
            Assert.Single(await room.Feature<ListDecisions>().List(TestContext.Current.CancellationToken))
        );

        var again = (
            await room.Feature<ListDecisions>().Question(kept.Id, TestContext.Current.CancellationToken)
        ).OrThrow();
        Assert.Equal(AskedJson.Write(asked), AskedJson.Write(again));
    }

    [Fact]
    public async Task The_days_of_decisions_tell_the_year_only_of_another_one()
    {
        await using var room = await Room.Open();
        var now = TimeProvider.System.GetLocalNow();
        await room.Add(Row(now), Row(new DateTimeOffset(2019, 11, 25, 12, 0, 0, TimeSpan.Zero)));

        var days = (await room.Feature<ListDecisions>().List(TestContext.Current.CancellationToken)).Select(
            one => one.Day
        );

        Assert.Equal(
            [now.ToString("d MMMM", System.Globalization.CultureInfo.InvariantCulture), "25 November 2019"],
            days
        );
    }

    [Fact]
    public void A_question_is_read_back_as_it_was_written()
    {
        var text = AskedJson.Write(Question);
        var read = AskedJson.Read(text).OrThrow();

        Assert.Equal(text, AskedJson.Write(read));
        Assert.Equal((3.5, "4-swung", 2.5), (read.Level, read.Feel, read.LeastTempo));
        Assert.Equal([4], read.Avoid);
        Assert.Equal(["groups-of-five", "groups-of-three"], read.Picked);
        Assert.Equal(5, read.Weights.Count);
        Assert.Equal(AskedJson.Write(new Asked()), AskedJson.Write(AskedJson.Read("{}").OrThrow()));
    }

    [Theory]
    [InlineData("", "cannot be read")]
    [InlineData("null", "it is empty")]
    [InlineData("""{ "technique": "juggling" }""", "cannot be read")]
    [InlineData("""{ "level": 9 }""", "the level of the question is out of range")]
    [InlineData("""{ "handSize": 0 }""", "the hand size of the question")]
    [InlineData("""{ "avoid": [5] }""", "the avoided fingers")]
    [InlineData("""{ "avoid": null }""", "")]
    [InlineData("""{ "minutes": 0 }""", "the minutes")]
    [InlineData("""{ "leastTempo": -1 }""", "the top tempo")]
    [InlineData("""{ "feel": "waltz" }""", "the feel")]
    [InlineData("""{ "weights": { "even-load": 101 } }""", "how much each one matters")]
    [InlineData("""{ "weights": null }""", "how much each one matters")]
    [InlineData("""{ "purpose": null }""", "the purpose")]
    public void A_question_that_is_none_is_refused(string text, string why)
    {
        Assert.False(AskedJson.Read(text).TryGet(out _, out var fault));
        Assert.Contains(why, fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_question_at_hand_is_kept_with_its_way_back_and_a_broken_one_is_no_question()
    {
        await using var room = await Room.Open();
        var keep = room.Feature<KeepQuestion>();
        Assert.Null(await keep.Read(TestContext.Current.CancellationToken));
        Assert.Null(
            await keep.Keep(
                new KeptQuestion(Question, [new AskedStep(new Asked(), "level from expert to 3.5")]),
                TestContext.Current.CancellationToken
            )
        );

        var kept = await keep.Read(TestContext.Current.CancellationToken);
        Assert.Equal(AskedJson.Write(Question), AskedJson.Write(kept!.Asked));
        Assert.Equal("level from expert to 3.5", Assert.Single(kept.Steps).What);

        await using var db = await room.Feature<Store>().Open(TestContext.Current.CancellationToken);
        db.Settings.Single(row => row.Name == "Choose").Value = "{ broken";
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
        Assert.Null(await keep.Read(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Moves_of_one_drag_are_one_step_back_and_the_last_one_is_answered()
    {
        await using var room = await Room.Open();
        var deliberation = room.Feature<Deliberation>();
        await deliberation.Resume(new Asked());
        await deliberation.Begin(["groups-of-five", "groups-of-three"], null);
        var criterion = Passagework.Choosing.Measures.Criteria.ComesOutEven;
        Assert.Equal("Groups of five", deliberation.Answer!.Exercises[0].Title);
        await deliberation.Ask(deliberation.Asked.Weighing(criterion.Id, 0), "counted");
        await Task.WhenAll(
            Enumerable.Range(1, 100).Select(weight => deliberation.Move(criterion.Id, weight))
        );
        await deliberation.Settle(criterion);

        Assert.Equal("comes out even from 0 to 100", deliberation.Undoes);
        Assert.Equal("Groups of three", deliberation.Answer.Exercises[0].Title);
        await deliberation.Undo();
        Assert.Equal(0, deliberation.Asked.Weights[criterion.Id]);
        Assert.Equal("Groups of five", deliberation.Answer.Exercises[0].Title);
        Assert.Equal("counted", deliberation.Undoes);
        var kept = await room.Feature<KeepQuestion>().Read(TestContext.Current.CancellationToken);
        Assert.Equal(["the exercises picked", "counted"], kept!.Steps.Select(step => step.What));
    }

    [Fact]
    public async Task Presses_that_follow_one_another_are_one_step_back_and_after_a_pause_another()
    {
        var clock = new Clock();
        await using var room = await Room.Open(clock);
        var deliberation = room.Feature<Deliberation>();
        await deliberation.Resume(new Asked { Level = 2 });
        await deliberation.Begin(["groups-of-five", "groups-of-three"], null);
        foreach (var (weight, after) in new[] { (99, 0.3), (98, 0.9), (97, 1.1), (96, 0.3), (97, 0.2) })
        {
            clock.Forward(TimeSpan.FromSeconds(after));
            await Press(deliberation, Passagework.Choosing.Measures.Criteria.EvenLoad, weight);
        }

        Assert.Equal("even load from 98 to 97", deliberation.Undoes);
        await Press(deliberation, Passagework.Choosing.Measures.Criteria.GeneralUse, 90);
        await Press(deliberation, Passagework.Choosing.Measures.Criteria.EvenLoad, 98);
        Assert.Equal("even load from 97 to 98", deliberation.Undoes);
        await Press(deliberation, Passagework.Choosing.Measures.Criteria.EvenLoad, 97);
        Assert.Equal("general use from 100 to 90", deliberation.Undoes);
        await deliberation.Undo();
        await deliberation.Undo();
        Assert.Equal("even load from 100 to 98", deliberation.Undoes);
        await deliberation.Undo();
        Assert.Equal("the exercises picked", deliberation.Undoes);
    }

    private static async Task Press(
        Deliberation deliberation,
        Passagework.Choosing.Measures.Criterion criterion,
        int weight
    )
    {
        await deliberation.Move(criterion.Id, weight);
        await deliberation.Settle(criterion);
    }

    private static DecisionRow Row(DateTimeOffset when) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            Kept = when,
            Question = "{}",
            Exercise = "pedal",
            Title = "Pedal",
            Verdict = "First",
        };
}
