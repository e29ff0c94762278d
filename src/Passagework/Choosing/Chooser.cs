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

    private static Outcome<Measured> Measure(ChoiceQuestion question)
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

        return new Measured(done.ToImmutable(), leftOut.ToImmutable());
    }

    private static Outcome<ChoiceAnswer> Rank(ChoiceQuestion question, Measured measured)
    {
        var criteria = question.Wishes.Criteria;
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
    private static Measured Fit(Measured measured, CriterionWeights weights)
    {
        var unfit = measured
            .Candidates.Where(candidate => weights.Used.All(k => candidate.Figures[k].Raw is null))
            .ToList();
        return new Measured(
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

    private static Outcome<ChoiceTable> Table(ChoiceQuestion question, Measured measured)
    {
        var anchors = AnchorsOf(question);
        return ChoiceTable.Of(
            [.. question.Wishes.Criteria.Select(criterion => criterion.Id)],
            [.. measured.Candidates.Select(candidate => RowOf(candidate, anchors))]
        );
    }

    private static ImmutableArray<Anchor> AnchorsOf(ChoiceQuestion question) =>
        [.. question.Wishes.Criteria.Select(criterion => question.AnchorOf(criterion.Id))];

    private static ChoiceAnswer Answer(ChoiceQuestion question, Measured measured, Choice choice)
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
            AllWeightings = WeightingShares.Of(choice, keepsOrder: false),
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

    private sealed record Measured(
        ImmutableArray<MeasuredCandidate> Candidates,
        ImmutableArray<(string Id, Fault Why)> LeftOut
    );
}
