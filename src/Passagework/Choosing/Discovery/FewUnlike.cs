using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>From a front to a few unlike finds with names.</summary>
internal sealed class FewUnlike
{
    // Standard deviations over the joint draws of the hands, raw (the same for every cell, assumed).
    private const double HandError = 0.05;
    private const int ErrorSample = 25;
    private readonly DiscoveryQuestion _question;
    private readonly SearchPlan _plan;
    private readonly CellRhythm _rhythm;
    private readonly Dictionary<long, Distribution<MoveClass>> _moves = [];

    public FewUnlike(DiscoveryQuestion question, SearchPlan plan)
    {
        (_question, _plan) = (question, plan);
        _rhythm = CellRhythm.Of(question.Space);
    }

    /// <summary>The finds, the best by weighted sum first.</summary>
    public ImmutableArray<FoundCell> Of(ImmutableArray<CellFront.Entry> front)
    {
        if (front.IsEmpty)
        {
            return [];
        }

        var errors = ErrorsOf(front);
        var values = front.Select(entry => ValuesOf(RawOf(entry.Take))).ToList();
        var scores = values.ConvertAll(Score);
        var compared = values.ConvertAll(row => Compared(row).ToArray());
        var thinned = Thinning.Of(
            compared,
            [.. _plan.Criteria.Select(compared => errors[compared.Criterion])],
            scores
        );
        double Likeness(int one, int other) =>
            Repertoire.Likeness.Overlap(MovesOf(front[one]), MovesOf(front[other])) ?? 0;
        var chosen = new List<int>();
        MarginalRelevance.Add(scores, Likeness, chosen, thinned, _question.Count);
        // Where errors leave fewer than were asked for, the rest of the front fills up.
        MarginalRelevance.Add(
            scores,
            Likeness,
            chosen,
            [.. Enumerable.Range(0, front.Length)],
            _question.Count
        );
        var names = new CellNamer(_question.Space);
        return [.. chosen.Select(at => Found(names, front[at], values[at], errors))];
    }

    private IEnumerable<double> Compared(ImmutableArray<double?> row) =>
        _plan.Criteria.Select(compared =>
            row[compared.Criterion]
            ?? throw new System.Diagnostics.UnreachableException("What is compared is measured.")
        );

    private FoundCell Found(
        CellNamer names,
        CellFront.Entry entry,
        ImmutableArray<double?> values,
        ImmutableArray<double> errors
    )
    {
        var recipe = RecipeOf(entry.Number);
        var (variant, first, offsets) = _plan.Numbers.Read(entry.Number);
        var name = names.Of(
            _plan.Variants[variant].Layout,
            _plan.Variants[variant].Direction,
            _question.Space.StrokesTold[first],
            offsets
        );
        return new FoundCell(
            name,
            recipe with
            {
                Title = name,
            },
            RawOf(entry.Take),
            values,
            errors,
            LibraryTwin.Of(recipe)
        );
    }

    private Recipe RecipeOf(long number)
    {
        var (variant, first, offsets) = _plan.Numbers.Read(number);
        var found = _plan.Variants[variant];
        return _question.Space.RecipeOf(
            found.Layout,
            found.Direction,
            _question.Space.StrokesTold[first],
            offsets
        );
    }

    private RawMeasures RawOf(CellTake take) =>
        new(
            Known(take.EvenLoad),
            Known(take.GeneralUse),
            Known(take.StayingPower),
            Known(take.UseInMusic),
            _rhythm.Ambiguity,
            _rhythm.ComesOutEven
        );

    private static double? Known(double value) => double.IsNaN(value) ? null : value;

    private ImmutableArray<double?> ValuesOf(RawMeasures raw) =>
        [
            .. RawMeasures.Criteria.Select(
                (id, k) => raw[k] is { } measured ? _question.Anchors.Of(id)?.ValueOf(measured) : null
            ),
        ];

    private double Score(ImmutableArray<double?> values)
    {
        var (sum, all) = (0.0, 0.0);
        for (var k = 0; k < values.Length; k++)
        {
            var weight = values[k] is null ? 0 : _question.Weights.GetValueOrDefault(RawMeasures.Criteria[k]);
            sum += weight * values[k] ?? 0;
            all += weight;
        }

        return sum / all;
    }

    private Distribution<MoveClass> MovesOf(CellFront.Entry entry)
    {
        if (!_moves.TryGetValue(entry.Number, out var known))
        {
            known = Distribution<MoveClass>.Of(MoveClass.In(Realized(entry)));
            _moves[entry.Number] = known;
        }

        return known;
    }

    private Realization Realized(CellFront.Entry entry) =>
        LineBuilder
            .Build(RecipeOf(entry.Number))
            .Then(line => Realizer.Realize(line, _question.Player))
            .OrThrow();

    // Errors in units of the value: of the hands a fixed one, of the music the median of a seeded sample of the front.
    private ImmutableArray<double> ErrorsOf(ImmutableArray<CellFront.Entry> front)
    {
        var errors = new double[RawMeasures.Criteria.Length];
        errors[0] = ErrorOf(0, HandError);
        errors[2] = ErrorOf(2, HandError);
        if (_question.Music is not { } music)
        {
            return [.. errors];
        }

        var chance = new SplitMix64(1);
        var (general, use) = (new List<double>(), new List<double>());
        for (var drawn = 0; drawn < ErrorSample; drawn++)
        {
            var entry = front[(int)(chance.NextUniform() * front.Length)];
            var played = Realized(entry);
            var leastCount = GeneralUse.LeastCount(entry.Take.LeastCeiling, played.Notes.Length);
            general.Add(Spread.Of(GeneralUse.Of(MovesOf(entry), leastCount, music).Resampled));
            use.Add(Spread.Of(UseInMusic.Of(played.Line, music).Resampled));
        }

        errors[1] = ErrorOf(1, Median(general));
        errors[3] = ErrorOf(3, Median(use));
        return [.. errors];
    }

    private double ErrorOf(int criterion, double raw) =>
        Math.Abs(_question.Anchors.Of(RawMeasures.Criteria[criterion])?.ErrorOf(raw) ?? 0);

    private static double Median(List<double> values)
    {
        values.Sort();
        return (values[(values.Count - 1) / 2] + values[values.Count / 2]) / 2;
    }
}
