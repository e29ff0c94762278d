using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>One system of a sheet's music.</summary>
/// <param name="Figure">What is drawn; only as wide as its staff.</param>
/// <param name="Bars">Whole bars from the first system's beginning to its end; null where it ends inside a bar.</param>
internal sealed record SheetSystem(Figure Figure, int? Bars);

/// <summary>Engraves bars of a sheet's music.</summary>
/// <remarks>Each stretch of bars is engraved once for each height of staff, however often it is asked for.</remarks>
internal sealed class ScoreSystems(Realization realization, ScoreOptions options)
{
    private readonly Dictionary<(BarSpan, double), Outcome<ImmutableArray<SheetSystem>>> _known = [];
    private readonly BarMarks _marks = new(realization.Line, options);

    /// <summary>Bars of the whole, a begun one counted.</summary>
    public int Bars { get; } = BarCut.Count(realization.Line);

    /// <summary>The systems of some bars; a short last one is only as wide as its staff.</summary>
    public Outcome<ImmutableArray<Figure>> Of(BarSpan span, double staffMm) =>
        SystemsOf(span, staffMm)
            .Then<ImmutableArray<Figure>>(systems =>
                systems.Select(system => system.Figure).ToImmutableArray()
            );

    /// <summary>The systems of some bars with how many bars each completes.</summary>
    public Outcome<ImmutableArray<SheetSystem>> SystemsOf(BarSpan span, double staffMm)
    {
        if (!_known.TryGetValue((span, staffMm), out var systems))
        {
            systems = Engrave(span, staffMm);
            _known.Add((span, staffMm), systems);
        }

        return systems;
    }

    /// <summary>What is asked to be written in none of the printed bars, for the teacher.</summary>
    public ImmutableArray<string> Lost(params ImmutableArray<BarSpan> printed) => _marks.Lost(printed);

    private Outcome<ImmutableArray<SheetSystem>> Engrave(BarSpan span, double staffMm)
    {
        var isWhole = span == new BarSpan(0, Bars);
        if ((isWhole ? realization : BarCut.Take(realization, span.From, span.To)) is not { } part)
        {
            return ImmutableArray<SheetSystem>.Empty;
        }

        var first = BarCut.FirstNote(realization.Line, span.From);
        return ScoreEngraver
            .Engrave(
                part,
                _marks.In(span) with
                {
                    WidthMm = SheetBox.WidthMm,
                    StaffMm = staffMm,
                    BarNumbers = false,
                    Begins = span.From == 0,
                    Ends = span.To == Bars,
                    ShortLast = true,
                    Counting = span.From == 0 ? options.Counting : CountedBars.None,
                }
            )
            .Then<ImmutableArray<SheetSystem>>(score =>
                score
                    .Systems.Select(
                        (system, index) => new SheetSystem(FigureOf(system, first), BarsTo(score, index))
                    )
                    .ToImmutableArray()
            );
    }

    private static int? BarsTo(Score score, int index)
    {
        var last = score.Systems[index].LastBar;
        var endsBar = index + 1 == score.Systems.Length || score.Systems[index + 1].FirstBar > last;
        return endsBar ? last - score.Systems[0].FirstBar + 1 : null;
    }

    // Marks keep the numbers that their notes have in the whole line.
    private static Figure FigureOf(ScoreSystem system, int first) =>
        new(
            system.MusicEndMm,
            system.HeightMm,
            [.. system.Marks.Select(mark => mark with { Note = mark.Note + first })]
        );
}
