using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Answers which of several exercises is most worth a player's time.</summary>
/// <example>
/// <c>Chooser.Choose(new ChoiceQuestion { Player = Player.At(2), Candidates = […], Pieces = pieces })</c>
/// </example>
public static class Chooser
{
    /// <summary>Measures, ranks and tries what would change the answer; refused where there is nothing to choose.</summary>
    public static Outcome<ChoiceAnswer> Choose(ChoiceQuestion question) =>
        Measure(question).Then(measured => Rank(question, measured));

    /// <summary>
    /// Measures the candidates of a question, the slow half of choosing; nothing of it hangs on weights and anchors. Refused where
    /// one that no hand can play is not to be left out.
    /// </summary>
    public static Outcome<MeasuredChoice> Measure(ChoiceQuestion question)
    {
        var levels = new PlayerLevels(question.Player);
        var done = ImmutableArray.CreateBuilder<MeasuredCandidate>();
        var leftOut = ImmutableArray.CreateBuilder<(string Id, Fault Why)>();
        // Each on its own, so that the answer does not hang on who is measured when.
        var outcomes = question
            .Candidates.AsParallel()
            .AsOrdered()
            .Select(source =>
                (source.Id, Outcome: MeasuredCandidate.Of(source, levels, question.Pieces, question.Wishes))
            );
        foreach (var (id, outcome) in outcomes)
        {
            if (outcome.TryGet(out var candidate, out var fault))
            {
                done.Add(candidate);
            }
            else if (question.LeavesOutUnfit)
            {
                leftOut.Add((id, fault));
            }
            else
            {
                return fault;
            }
        }

        return new MeasuredChoice(done.ToImmutable(), leftOut.ToImmutable());
    }

    /// <summary>Ranks what was measured before, and tries what would change the answer; refused where there is nothing to choose.</summary>
    /// <param name="question">As it was measured; weights, anchors and method may be others.</param>
    /// <param name="measured">What <see cref="Measure"/> gave, or fewer of its candidates.</param>
    /// <exception cref="ArgumentException">The candidates were measured on other criteria.</exception>
    public static Outcome<ChoiceAnswer> Rank(ChoiceQuestion question, MeasuredChoice measured)
    {
        var criteria = question.Wishes.Criteria;
        if (measured.Candidates.Any(candidate => candidate.Figures.Length != criteria.Length))
        {
            throw new ArgumentException("The marks have changed since it was measured.", nameof(measured));
        }

        var notMeasured = NotMeasured(question.Wishes, criteria, measured.Candidates);
        return question
            .Wishes.WeightsOf(criteria, notMeasured)
            .Then(weights =>
            {
                var fit = question.LeavesOutUnfit ? Fit(measured, weights) : measured;
                return Table(question, fit)
                    .Then(table => Choice.Of(table, weights))
                    .Then<ChoiceAnswer>(choice =>
                        Answer(question, fit, choice) with
                        {
                            NotMeasured = notMeasured,
                        }
                    );
            });
    }

    // Without those that nothing that counts can be measured on.
    private static MeasuredChoice Fit(MeasuredChoice measured, CriterionWeights weights)
    {
        var unfit = measured
            .Candidates.Where(candidate => weights.Used.All(k => candidate.Figures[k].Raw is null))
            .ToList();
        return new MeasuredChoice(
            measured.Candidates.RemoveRange(unfit),
            measured.LeftOut.AddRange(
                unfit.Select(candidate =>
                    (
                        candidate.Source.Id,
                        new Fault("nothing that counts can be measured", candidate.Source.Id)
                    )
                )
            )
        );
    }

    private static Outcome<ChoiceTable> Table(ChoiceQuestion question, MeasuredChoice measured)
    {
        var anchors = AnchorsOf(question);
        return ChoiceTable.Of(
            [.. question.Wishes.Criteria.Select(criterion => criterion.Id)],
            [.. measured.Candidates.Select(candidate => RowOf(candidate, anchors))]
        );
    }

    private static ImmutableArray<Anchor> AnchorsOf(ChoiceQuestion question) =>
        [.. question.Wishes.Criteria.Select(criterion => question.AnchorOf(criterion.Id))];

    private static ChoiceAnswer Answer(ChoiceQuestion question, MeasuredChoice measured, Choice choice)
    {
        var draws = DrawsOf(measured.Candidates, AnchorsOf(question));
        return new ChoiceAnswer
        {
            Question = question,
            Criteria = question.Wishes.Criteria,
            Candidates = measured.Candidates,
            Choice = choice,
            Draws = draws,
            Ranking = Ranking.Of(choice, question.Method),
            OrderedWeightings = WeightingShares.Of(choice, keepsOrder: true),
            OtherDraws = DrawShares.Of(choice, draws),
            Flips = FlipPoints.Of(choice),
            SmallestChange = SmallestChange.Of(choice),
            Dominators = ParetoFront.Dominators(choice),
            LeftOut = measured.LeftOut,
        };
    }

    // Where the teacher has not asked for it by name, a criterion that nobody can be measured on is set aside and told.
    private static ImmutableArray<Criterion> NotMeasured(
        Wishes wishes,
        ImmutableArray<Criterion> criteria,
        ImmutableArray<MeasuredCandidate> candidates
    ) =>
        wishes.AreNamed
            ? []
            : [.. criteria.Where((_, k) => candidates.All(candidate => candidate.Figures[k].Raw is null))];

    private static Candidate RowOf(MeasuredCandidate measured, ImmutableArray<Anchor> anchors) =>
        new(
            measured.Source.Id,
            [
                .. measured.Figures.Select(
                    (figure, k) =>
                        figure.Raw is { } raw
                            ? new Mark(
                                anchors[k].ValueOf(raw),
                                Spread.Of([.. figure.Draws.Select(anchors[k].ValueOf)])
                            )
                            : new Mark(null)
                ),
            ]
        )
        {
            Family = measured.Source.Family,
        };

    private static ImmutableArray<double[]> DrawsOf(
        ImmutableArray<MeasuredCandidate> candidates,
        ImmutableArray<Anchor> anchors
    ) =>
        [
            .. Enumerable
                .Range(0, Figure.DrawCount)
                .Select(d =>
                    candidates
                        .SelectMany(candidate =>
                            candidate.Figures.Select(
                                (figure, k) =>
                                    figure.Raw is null
                                        ? ChoiceTable.MissingCountsAs
                                        : anchors[k].ValueOf(figure.At(d))
                            )
                        )
                        .ToArray()
                ),
        ];
}
