using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Engraves bars of a sheet's music, a figure for each system.</summary>
/// <remarks>Each stretch of bars is engraved once for each height of staff, however often it is asked for.</remarks>
internal sealed class ScoreSystems(Realization realization, ScoreOptions options)
{
    private readonly Dictionary<(int, int, double), Outcome<ImmutableArray<Figure>>> _known = [];
    private readonly int _bars = BarCut.Count(realization.Line);
    private readonly BarMarks _marks = new(realization.Line, options);

    /// <summary>The systems of some bars, counted from 0; a short last one is only as wide as its staff.</summary>
    public Outcome<ImmutableArray<Figure>> Of(int from, int to, double staffMm)
    {
        if (!_known.TryGetValue((from, to, staffMm), out var systems))
        {
            systems = Engrave(from, to, staffMm);
            _known.Add((from, to, staffMm), systems);
        }

        return systems;
    }

    /// <summary>What is asked to be written in none of the printed bars, for the teacher.</summary>
    public ImmutableArray<string> Lost(params ImmutableArray<BarSpan> printed) => _marks.Lost(printed);

    private Outcome<ImmutableArray<Figure>> Engrave(int from, int to, double staffMm)
    {
        var isWhole = from == 0 && to == _bars;
        if ((isWhole ? realization : BarCut.Take(realization, from, to)) is not { } part)
        {
            return ImmutableArray<Figure>.Empty;
        }

        var first = BarCut.FirstNote(realization.Line, from);
        return ScoreEngraver
            .Engrave(
                part,
                _marks.In(new BarSpan(from, to)) with
                {
                    WidthMm = SheetBox.WidthMm,
                    StaffMm = staffMm,
                    BarNumbers = false,
                    Begins = from == 0,
                    Ends = to == _bars,
                    ShortLast = true,
                    Counting = from == 0 ? options.Counting : CountedBars.None,
                }
            )
            .Then<ImmutableArray<Figure>>(score =>
                score.Systems.Select(system => FigureOf(system, first)).ToImmutableArray()
            );
    }

    // Marks keep the numbers that their notes have in the whole line.
    private static Figure FigureOf(ScoreSystem system, int first) =>
        new(
            system.MusicEndMm,
            system.HeightMm,
            [.. system.Marks.Select(mark => mark with { Note = mark.Note + first })]
        );
}
