using CsCheck;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using Passagework.Hands.Variants;
using Passagework.Tests.Exercises.Ideas;
using static Passagework.Tests.Exercises.Ideas.PlainWords;

namespace Passagework.Tests.Hands.Explaining;

public class PlainSentencesTests
{
    [Fact]
    public void All_that_is_said_of_a_measured_idea_is_plain() =>
        RandomIdeas.All.Sample(
            recipe =>
                !Measurer.Measure(recipe, Player.At(1)).TryGet(out var measured, out _)
                || measured.Realization.Notes.Length > 100
                || Said(measured).All(IsPlain),
            iter: 60
        );

    private static IEnumerable<string?> Said(Measurement measured)
    {
        var last = measured.Realization.Notes.Length - 1;
        var ways = OtherWays.Of(measured, last);
        var move = MoveExplanation.Of(measured, last, 72);
        return CountSentences
            .Of(measured)
            .Select(count => count.Text)
            .Concat(move.Sentences.Select(part => part.Text))
            .Concat(
                ways.Fingerings.Concat(ways.Strokes).SelectMany(way => new[] { way.Words, way.Impossible })
            )
            .Concat(Rungs.Of(measured).All.Select(rung => rung.Words))
            .Append(move.Assumptions)
            .Append(ways.WhyFinger)
            .Append(ways.WhyStroke)
            .Append(LimitingMove.Of(measured)?.Sentence);
    }
}
