using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The exercises of a question, measured and ready to be weighed in any way.</summary>
internal sealed class Weighing
{
    private readonly string _measured;
    private readonly MeasuredChoice _choice;
    private readonly Dictionary<string, string> _titles;
    private readonly ImmutableArray<LeftOut> _unplayable;

    public Weighing(
        Asked asked,
        ChoiceQuestion question,
        MeasuredChoice choice,
        ImmutableArray<Fault> missing
    )
    {
        (_measured, _choice, Question, Missing) = (asked.Measured, choice, question, missing);
        _titles = question.Candidates.ToDictionary(source => source.Id, source => source.Title);
        _unplayable =
        [
            .. choice.LeftOut.Select(left => new LeftOut(
                _titles[left.Id],
                "no hand can play them",
                left.Why.What
            )),
        ];
    }

    /// <summary>The question in the engine's words, without weights.</summary>
    public ChoiceQuestion Question { get; }

    /// <summary>Named exercises that there are not, and why.</summary>
    public ImmutableArray<Fault> Missing { get; }

    /// <summary>The criteria, measured ones first, then the teacher's own.</summary>
    public ImmutableArray<Criterion> Criteria => Question.Wishes.Criteria;

    /// <summary>Whether it serves another question as well: only weights, filters and words differ.</summary>
    public bool Serves(Asked asked) => asked.Measured == _measured;

    /// <summary>Filters, ranks and explains; refused where fewer than two are left or nothing counts.</summary>
    public Outcome<Weighed> Weigh(Asked asked)
    {
        var refused = _choice
            .Candidates.Select(candidate =>
                (Candidate: candidate, Why: ExerciseFilters.Refusal(asked, candidate))
            )
            .ToLookup(one => one.Why is null);
        ImmutableArray<LeftOut> leftOut = [.. _unplayable, .. refused[false].Select(one => one.Why!)];
        var left = new MeasuredChoice([.. refused[true].Select(one => one.Candidate)], []);
        if (left.Candidates.Length < 2)
        {
            return asked.Picked.Length == 1 ? OnePicked : TooFew(left.Candidates.Length, leftOut.Length);
        }

        var unknown = Criteria
            .Where((_, k) => left.Candidates.All(candidate => candidate.Figures[k].Raw is null))
            .ToImmutableArray();
        var question = Question with
        {
            Wishes = Question.Wishes with { Weights = WeightsOf(asked, unknown) },
        };
        return question.Wishes.Weights.Values.Sum() > 0
            ? Chooser
                .Rank(question, left)
                .Then<Weighed>(answer => new Weighed(answer, [.. leftOut, .. Unfit(answer)], unknown))
            : new Fault(
                "nothing counts",
                "how much each one matters",
                "at least one above 0 that can be measured on these exercises"
            );
    }

    private ImmutableSortedDictionary<string, double> WeightsOf(
        Asked asked,
        ImmutableArray<Criterion> without
    ) =>
        Criteria
            .Except(without)
            .Where(criterion => asked.Weights.ContainsKey(criterion.Id))
            .ToImmutableSortedDictionary(
                criterion => criterion.Id,
                criterion => (double)asked.Weights[criterion.Id],
                StringComparer.Ordinal
            );

    private IEnumerable<LeftOut> Unfit(ChoiceAnswer answer) =>
        answer.LeftOut.Select(left => new LeftOut(
            _titles[left.Id],
            "nothing that counts can be measured",
            left.Why.What
        ));

    private static Fault OnePicked => new("one exercise is picked so far", Right: "another beside it");

    private static Fault TooFew(int left, int filtered) =>
        new(
            left == 0 ? "no exercise is left to choose from" : "only one exercise is left to choose from",
            "the question",
            filtered > 0 ? "a wider filter, or more exercises" : "at least two exercises"
        );
}
