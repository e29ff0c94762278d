using System.Collections.Immutable;
using System.Globalization;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The answer to a question as the page shows it.</summary>
public sealed class Weighed
{
    /// <summary>How many exercises are drawn; the rest has a line each when there are more than <see cref="MostDrawn"/>.</summary>
    public const int FirstDrawn = 3;

    private const int MostDrawn = 6;

    internal Weighed(ChoiceAnswer answer, ImmutableArray<LeftOut> leftOut, ImmutableArray<Criterion> unknown)
    {
        (Answer, LeftOut, NotMeasured) = (answer, leftOut, unknown);
        Explanation = Explanation.Of(answer);
        Turn = TurnOf(answer, Explanation);
        Exercises = [.. answer.Ranking.Standings.Select(standing => new RankedExercise(answer, standing))];
        var drawn = Exercises.Length > MostDrawn ? FirstDrawn : Exercises.Length;
        (Drawn, Rest) = ([.. Exercises.Take(drawn)], [.. Exercises.Skip(drawn)]);
    }

    /// <summary>The answer itself.</summary>
    public ChoiceAnswer Answer { get; }

    /// <summary>The reason in sentences.</summary>
    public Explanation Explanation { get; }

    /// <summary>What weight would turn the answer.</summary>
    public string Turn { get; }

    /// <summary>All of them, the best first.</summary>
    public ImmutableArray<RankedExercise> Exercises { get; }

    /// <summary>Those that are drawn.</summary>
    public ImmutableArray<RankedExercise> Drawn { get; }

    /// <summary>Those that have a line.</summary>
    public ImmutableArray<RankedExercise> Rest { get; }

    /// <summary>What is not weighed, and why.</summary>
    public ImmutableArray<LeftOut> LeftOut { get; }

    /// <summary>Criteria that nobody could be measured on.</summary>
    public ImmutableArray<Criterion> NotMeasured { get; }

    /// <summary>The criteria that count, with their shares in 100, the widest first.</summary>
    public ImmutableArray<(int Place, string Title, double Share)> Columns =>
        [
            .. Answer
                .Choice.Weights.Used.OrderByDescending(k => Answer.Choice.Weights.Shares[k])
                .Select(k =>
                    (k, NumberWords.Sentence(Answer.Criteria[k].Title), 100 * Answer.Choice.Weights.Shares[k])
                ),
        ];

    /// <summary>Whether all that counts counts alike, so that there is no order to keep to.</summary>
    public bool IsUnordered =>
        Answer
            .Choice.Weights.Used.Select(k => Math.Round(Answer.Choice.Weights.Shares[k], 9))
            .Distinct()
            .Count() == 1;

    /// <summary>A share in 100: whole, with a decimal where a whole one would hide something.</summary>
    public static string Hundredths(double share) =>
        (100 * share).ToString(share is > 0 and < 0.1 ? "0.0" : "0", CultureInfo.InvariantCulture);

    // The nearest flip of one weight; the engine's sentence where several would have to move, or two are level.
    private static string TurnOf(ChoiceAnswer answer, Explanation explanation)
    {
        if (answer.Ranking.IsTied || answer.NearestFlip is not { } flip)
        {
            return explanation.Change;
        }

        var now = answer.Choice.Weights.Shares[flip.Criterion];
        var way = flip.Weight > now ? "more" : "less";
        return $"{answer.Criteria[flip.Criterion].Title} counts for {way} than {Hundredths(flip.Weight)} parts in 100, now {Hundredths(now)}: "
            + $"then {answer.Candidates[flip.Winner].Source.Mention} would lead.";
    }
}
