using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Tests.Choosing.Measures;

namespace Passagework.Tests.Choosing.Explaining;

public sealed class ExplanationTests
{
    private static readonly Lazy<ChoiceAnswer> Whole = new(() => Ask([.. Library.Families]));

    [Fact]
    public void At_most_two_reasons_are_given_and_never_no_argument_against()
    {
        var answer = Whole.Value;
        for (var a = 0; a < answer.Candidates.Length; a++)
        {
            for (var b = 0; b < answer.Candidates.Length; b++)
            {
                var pair = new Pair(answer, a, b);
                Assert.InRange(pair.Reasons(2, 0.5).Length, 1, 2);
                Assert.NotEqual("", pair.Against());
            }
        }
    }

    [Fact]
    public void The_first_reason_is_the_largest_clear_difference()
    {
        var answer = Ask(["groups-of-five", "groups-of-three", "one-sided-rolls-low"]);

        Assert.Equal(
            ["No one feel is announced, where the other locks to triplets."],
            Explanation.Of(answer).Reasons
        );
        Assert.Equal(
            "On even load, groups of three would be ahead, but with no clear difference.",
            Explanation.Of(answer).Against
        );
    }

    [Fact]
    public void Skipped_joins_are_those_that_a_count_by_hand_finds()
    {
        foreach (var candidate in Whole.Value.Candidates)
        {
            var notes = candidate.Forms[0].Realization.Notes;
            var (joins, skips) = (0, 0);
            for (var i = 1; i < notes.Length; i++)
            {
                if (
                    notes[i].Note.Group is { } group
                    && notes[i - 1].Note.Group is { } before
                    && group != before
                )
                {
                    joins++;
                    skips += Math.Abs(notes[i].Place.String - notes[i - 1].Place.String) > 1 ? 1 : 0;
                }
            }

            var said = HandRemarks
                .Pros(candidate)
                .FirstOrDefault(pro => pro.StartsWith("skips", StringComparison.Ordinal));
            Assert.Equal(skips > 0, said is not null);
            var count = skips == joins ? "at every join" : $"at {NumberWords.OutOf(skips, joins)} joins";
            Assert.True(said?.Contains(count, StringComparison.Ordinal) ?? true, said);
        }
    }

    [Fact]
    public void What_is_said_for_a_value_is_never_said_against_it()
    {
        var answer = Whole.Value;
        for (var a = 0; a < answer.Candidates.Length; a++)
        {
            var remarks = ExerciseRemarks.Of(answer, a);
            Assert.Empty(remarks.Pros.Intersect(remarks.Cons));
            Assert.All(remarks.Pros.Concat(remarks.Cons), said => Assert.Matches(@"^[A-Z].*\.$", said));
        }
    }

    [Fact]
    public void Every_figure_has_a_sentence_of_its_own()
    {
        var answer = Whole.Value;
        for (var a = 0; a < answer.Candidates.Length; a++)
        {
            var sentences = answer.Criteria.Select((_, k) => FigureSentences.Of(answer, a, k)).ToList();
            Assert.Equal(sentences.Count, sentences.Distinct().Count());
            Assert.All(sentences, said => Assert.Matches(@"^[A-Z].*\.$", said));
        }
    }

    [Fact]
    public void Every_figure_is_said_in_a_few_words_and_what_is_missing_says_why()
    {
        var answer = Ask(["groups-of-five", "one-sided-rolls-low", "straight"]);

        Assert.Equal(
            [
                "the loads of the hands stand 89 to 100",
                "all of its moves are in the pieces; it holds one in ten of theirs",
                "a beginner tops out at 37 beats a minute, an expert at 162",
                "one in ten of its figures live in the pieces",
                "accents visit every part of the beat",
                "in one of seven feels",
            ],
            answer.Criteria.Select((_, k) => FigureSentences.Brief(answer, 0, k))
        );
        Assert.Equal(
            "the loads of the hands stand 81 to 100; one finger does everything",
            FigureSentences.Brief(answer, 1, 0)
        );
        Assert.StartsWith(
            "not measured: it has no groups",
            FigureSentences.Brief(answer, 2, 4),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_tie_says_what_would_part_the_two()
    {
        var answer = Ask(
            ["groups-of-five", "groups-of-seven"],
            WishesJson.Read("""{ "passagework": 1, "weights": { "rhythmic-ambiguity": 1 } }""").OrThrow()
        );

        Assert.Equal("First, and level: groups of five and groups of seven.", Explanation.Of(answer).Verdict);
        Assert.StartsWith(
            "They are level as it is weighed now; with a little more weight on ",
            Explanation.Of(answer).Change,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "These figures are counted",
            Explanation.Of(answer).Doubt,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_missing_figure_is_the_first_doubt()
    {
        var answer = Ask(["straight", "groups-of-four"]);

        Assert.StartsWith(
            "Rhythmic ambiguity could not be measured on both",
            Explanation.Of(answer).Doubt,
            StringComparison.Ordinal
        );
    }

    private static ChoiceAnswer Ask(ImmutableArray<string> families, Wishes? wishes = null) =>
        Chooser
            .Choose(
                new ChoiceQuestion
                {
                    Player = Player.At(2),
                    Candidates = [.. families.Select(family => CandidateSource.OfFamily(family).OrThrow())],
                    Pieces = Music.BuiltIn,
                    Wishes = wishes ?? Wishes.Usual,
                }
            )
            .OrThrow();
}
