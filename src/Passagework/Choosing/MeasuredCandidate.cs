using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;
using Passagework.Repertoire;
using Passagework.Rhythm;

namespace Passagework.Choosing;

/// <summary>A candidate measured on everything: figures are means over its forms.</summary>
public sealed record MeasuredCandidate
{
    /// <summary>What was measured.</summary>
    public required CandidateSource Source { get; init; }

    /// <summary>Its forms, one after the other.</summary>
    public required ImmutableArray<MeasuredForm> Forms { get; init; }

    /// <summary>What its moves share with the music at hand.</summary>
    public required GeneralUse GeneralUse { get; init; }

    /// <summary>How far the figures of each form are met in it.</summary>
    public required ImmutableArray<UseInMusic> FiguresMet { get; init; }

    /// <summary>The figures of the first form.</summary>
    public UseInMusic UseInMusic => FiguresMet[0];

    /// <summary>The figure on each criterion, in the order of the criteria.</summary>
    public required ImmutableArray<Figure> Figures { get; init; }

    /// <summary>Pieces that were not counted for this candidate because they hold it, by name.</summary>
    public required ImmutableArray<string> PiecesLeftOut { get; init; }

    /// <summary>Measures a candidate; refused when no hand can play one of its forms.</summary>
    public static Outcome<MeasuredCandidate> Of(
        CandidateSource source,
        PlayerLevels levels,
        PieceCollection pieces,
        Wishes wishes
    )
    {
        var forms = ImmutableArray.CreateBuilder<MeasuredForm>(source.Forms.Length);
        foreach (var recipe in source.Forms)
        {
            if (!MeasuredForm.Of(recipe, levels).TryGet(out var form, out var fault))
            {
                return fault.At($"{source.Id}: ");
            }

            forms.Add(form);
        }

        var measured = forms.MoveToImmutable();
        var others = Without(pieces, measured);
        var candidate = new MeasuredCandidate
        {
            Source = source,
            Forms = measured,
            GeneralUse = GeneralUse.Of([.. measured.Select(form => form.Measured)], others),
            FiguresMet = [.. measured.Select(form => UseInMusic.Of(form.Realization.Line, others))],
            Figures = [],
            PiecesLeftOut = [.. pieces.Pieces.Except(others.Pieces).Select(piece => piece.Name)],
        };
        return candidate with
        {
            Figures = [.. wishes.Criteria.Select(criterion => candidate.FigureOf(criterion, wishes))],
        };
    }

    // Forms that differ in their strokes alone have the same notes.
    private static PieceCollection Without(PieceCollection pieces, ImmutableArray<MeasuredForm> forms) =>
        forms
            .Select(form => form.Realization.Line)
            .DistinctBy(line => string.Join(' ', line.Notes.Select(note => note.Midi)))
            .Aggregate(pieces, (left, line) => left.Without(line));

    private Figure FigureOf(Criterion criterion, Wishes wishes)
    {
        if (wishes.Marks.TryGetValue(criterion.Id, out var marks))
        {
            return MarkOf(Source, marks);
        }

        return criterion.Id switch
        {
            "even-load" => Figure.Mean([.. Forms.Select(form => form.EvenLoad)]),
            "staying-power" => Figure.Mean([.. Forms.Select(form => form.StayingPower)]),
            "general-use" => new Figure(GeneralUse.Raw, GeneralUse.Resampled),
            "use-in-music" => Figure.Mean([.. FiguresMet.Select(met => new Figure(met.Raw, met.Resampled))]),
            "rhythmic-ambiguity" => Counted(fit => fit.Ambiguity),
            _ => Counted(fit => fit.ComesOutEven),
        };
    }

    private Figure Counted(Func<GroupFit, Fraction?> count) =>
        Figure.Mean([
            .. Forms.Select(form =>
                Figure.Exact(form.Measured.Fit is { } fit ? count(fit)?.ToDouble() : null)
            ),
        ]);

    // By its own name, or by its family's.
    private static Figure MarkOf(CandidateSource source, ImmutableSortedDictionary<string, double> marks)
    {
        var known = marks.TryGetValue(source.Id, out var mark) || marks.TryGetValue(source.Family, out mark);
        return known ? Figure.Exact(mark) : Figure.Missing;
    }
}
