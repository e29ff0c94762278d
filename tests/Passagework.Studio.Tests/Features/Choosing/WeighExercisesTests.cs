using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Tests.Features.Choosing;

public sealed class WeighExercisesTests
{
    private static readonly Asked Three = new()
    {
        Picked = ["groups-of-five", "groups-of-three", "one-sided-rolls-low"],
    };

    // What `passagework choose` asks when nothing is named.
    [Fact]
    public async Task The_usual_question_is_answered_as_the_command_line_answers_it()
    {
        await using var room = await Room.Open();
        var player = Player.At(2);
        var expected = Chooser
            .Choose(
                new ChoiceQuestion
                {
                    Player = player,
                    Candidates =
                    [
                        .. Library.Families.Select(family => CandidateSource.OfFamily(family).OrThrow()),
                    ],
                    Pieces = PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow(),
                    LeavesOutUnfit = true,
                }
            )
            .OrThrow();

        var answer = await room.Weigh(new Asked());

        Assert.Equal(expected.Ranking.Standings, answer.Answer.Ranking.Standings);
        Assert.Equal(expected.OrderedWeightings.First, answer.Answer.OrderedWeightings.First);
        Assert.Equal(expected.Flips, answer.Answer.Flips);
        Assert.Equal(29, answer.Exercises.Length);
        Assert.Equal((3, 26), (answer.Drawn.Length, answer.Rest.Length));
        Assert.Equal("groups-of-seven-up-and-down", answer.Exercises[0].Key.Text);
    }

    // The table of docs/choosing.md: 0.791, 0.690, 0.590; first in 77, 4 and 19 of 100.
    [Fact]
    public async Task Three_families_have_the_figures_of_the_documents()
    {
        await using var room = await Room.Open();

        var answer = await room.Weigh(Three);

        Assert.Equal(
            ["Groups of five", "Groups of three", "Rolls on the lower side of the box"],
            answer.Exercises.Select(one => one.Title)
        );
        Assert.Equal([79, 69, 59], answer.Exercises.Select(one => one.Score));
        Assert.Equal([77, 4, 19], answer.Exercises.Select(one => one.First));
        Assert.Equal(
            "comes out even counts for more than 11 parts in 100, now 0: then groups of three would lead.",
            answer.Turn
        );
        Assert.True(answer.IsUnordered);
        Assert.Equal("A minor pentatonic, box 1", answer.Exercises[0].Where(default));
        Assert.Equal("staying power", answer.Exercises[0].HeldBackBy);
    }

    [Fact]
    public async Task What_is_measured_serves_other_weights_filters_and_words_but_no_other_player()
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(Three);

        Assert.True(weighing.Serves(Three.Weighing("general-use", 3).NotCounting("even-load")));
        Assert.True(
            weighing.Serves(Three with { WidestStretch = 3, Feel = "3", Minutes = 2, Purpose = "anything" })
        );
        Assert.False(weighing.Serves(Three with { Level = 3 }));
        Assert.False(weighing.Serves(Three with { Avoid = [4] }));
        Assert.False(weighing.Serves(Three with { Technique = Technique.Economy }));
        Assert.False(weighing.Serves(Three with { Picked = [] }));
    }

    [Fact]
    public async Task Each_filter_leaves_out_what_it_names_and_says_why()
    {
        await using var room = await Room.Open();
        var weighing = await room.Measure(new Asked());

        foreach (
            var (asked, filter) in new[]
            {
                (new Asked { WidestStretch = 3 }, "a stretch over 3 frets"),
                (new Asked { LeastTempo = 4 }, "a top tempo below 4 notes a second"),
                (new Asked { Feel = "3" }, "does not come out even in triplets"),
                (new Asked { Minutes = 2 }, "above 2 minutes"),
            }
        )
        {
            var answer = weighing.Weigh(asked).OrThrow();
            Assert.NotEmpty(answer.LeftOut);
            Assert.Equal(29, answer.Exercises.Length + answer.LeftOut.Length);
            Assert.All(answer.LeftOut, one => Assert.Equal(filter, one.Filter));
        }

        Assert.Contains(
            "Groups of five",
            weighing.Weigh(new Asked { Feel = "3" }).OrThrow().LeftOut.Select(one => one.Title)
        );
        Assert.False(weighing.Weigh(new Asked { LeastTempo = 99 }).TryGet(out _, out var fault));
        Assert.Equal(
            "the question: no exercise is left to choose from; a wider filter, or more exercises",
            fault.ToString()
        );
    }

    [Fact]
    public async Task What_just_fits_a_filter_is_weighed()
    {
        await using var room = await Room.Open();
        foreach (var candidate in (await room.Weigh(new Asked())).Answer.Candidates)
        {
            var frets = candidate.Forms.Max(form => form.Measured.Fretting.Stretch);
            var tempo = candidate.Forms.Min(form => form.Measured.Ceiling.Least!.Value);

            Assert.Null(
                ExerciseFilters.Refusal(new Asked { WidestStretch = frets, LeastTempo = tempo }, candidate)
            );
            Assert.NotNull(ExerciseFilters.Refusal(new Asked { WidestStretch = frets - 1 }, candidate));
            Assert.NotNull(ExerciseFilters.Refusal(new Asked { LeastTempo = tempo + 0.001 }, candidate));
        }
    }

    [Fact]
    public async Task Own_exercises_are_weighed_with_their_marks_and_thrown_away_ones_are_named()
    {
        await using var room = await Room.Open();
        var recipe = Library.Find("groups-of-four-down").OrThrow().Recipe with { Title = "Four for Yuna" };
        var (own, gone) = (Row(recipe), Row(recipe));
        gone.ThrownAway = TimeProvider.System.GetUtcNow();
        await room.Add(
            own,
            gone,
            new MarkRow
            {
                Exercise = ExerciseKey.Of(own.Id).Text,
                Criterion = "fun",
                Value = 1,
            },
            new MarkRow
            {
                Exercise = "groups-of-five-up",
                Criterion = "fun",
                Value = 0.25,
            },
            new MarkRow
            {
                Exercise = "groups-of-five-down",
                Criterion = "fun",
                Value = 0.75,
            },
            new MarkRow
            {
                Exercise = "groups-of-five-up",
                Criterion = "even-load",
                Value = 1,
            }
        );
        var asked = new Asked
        {
            Picked = [ExerciseKey.Of(own.Id).Text, ExerciseKey.Of(gone.Id).Text, "groups-of-five", "nothing"],
            Weights = new Asked().Weights.Clear().Add("fun", 100),
        };

        var weighing = await room.Measure(asked);
        var answer = weighing.Weigh(asked).OrThrow();

        Assert.Equal(["Four for Yuna", "Groups of five"], answer.Exercises.Select(one => one.Title));
        Assert.Equal([100, 50], answer.Exercises.Select(one => one.Score));
        Assert.Equal(ExerciseKey.Of(own.Id), answer.Exercises[0].Key);
        Assert.Equal(2, weighing.Missing.Length);
        Assert.Contains("thrown away", weighing.Missing[0].What, StringComparison.Ordinal);
        Assert.Contains("'nothing'", weighing.Missing[1].What, StringComparison.Ordinal);
        Assert.Equal(7, weighing.Criteria.Length);

        var everything = await room.Weigh(new Asked { WithOwn = true });
        Assert.Equal(30, everything.Exercises.Length);
    }

    [Fact]
    public async Task Own_pieces_are_the_music_when_asked_for()
    {
        await using var room = await Room.Open();
        Assert.False(
            (
                await room.Feature<WeighExercises>()
                    .Measure(Three with { OwnMusic = true }, TestContext.Current.CancellationToken)
            ).TryGet(out _, out var fault)
        );
        Assert.Contains("no pieces of your own", fault.What, StringComparison.Ordinal);

        await room.Add(
            new PieceRow
            {
                Id = Guid.CreateVersion7(),
                Title = "Tune",
                Recipe = RecipeJson.Write(BuiltInPieces.Lines[0].Line.Recipe),
            },
            new PieceRow
            {
                Id = Guid.CreateVersion7(),
                Title = "Broken",
                Recipe = "{",
            }
        );
        var weighing = await room.Measure(Three with { OwnMusic = true });

        Assert.Equal("Tune", Assert.Single(weighing.Question.Pieces.Pieces).Name);
        Assert.Equal("Broken", Assert.Single(weighing.Question.Pieces.LeftOut).Name);
        Assert.False(weighing.Question.Anchors.Of("general-use")!.IsExact);
    }

    private static ExerciseRow Row(Recipe recipe) =>
        new()
        {
            Id = Guid.CreateVersion7(),
            Recipe = RecipeJson.Write(recipe),
            Title = recipe.Title!,
            OnShelf = true,
        };
}
