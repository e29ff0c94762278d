using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Engraving.Strips;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Screens;

/// <summary>The two small pictures of an exercise on the shelf, for a row 72 pixels high.</summary>
/// <example>
/// <c>ShelfPictures.Strip(measured, widthPx: 220)</c>
/// </example>
public static class ShelfPictures
{
    private const double RowPx = 72;
    private const double AirPx = 6;
    private const double LeastPx = 100;
    private const double MostPx = 2_000;
    private const double AxisPx = 1;
    private const double EdgePx = 0.8;

    // Six lines a space and a half apart and a digit above and below them stand in the row.
    private const double TabSpacePx = 7.4;
    private const double PxPerMm = TabSpacePx / ScreenLayout.SpaceMm;

    /// <summary>
    /// The time that each hand needs for each move, fretting above the line and picking below it, without a limit; all
    /// notes side by side.
    /// </summary>
    /// <param name="measured">What the notes ask.</param>
    /// <param name="widthPx">Width, 100 to 2,000.</param>
    public static Outcome<ScreenPicture> Strip(Measurement measured, double widthPx)
    {
        if (ScreenRules.Within(widthPx, (LeastPx, MostPx), "the width of the strip") is { } fault)
        {
            return fault;
        }

        var most = measured.Demands.Max(demand => Math.Max(demand.FrettingMs ?? 0, demand.PickingMs ?? 0));
        var elements = new CompactSvg(new PxFrame(1));
        var pxPerMs = ((RowPx / 2) - AirPx) / Math.Max(most, 1);
        ImmutableArray<double> Heights(Func<MoveDemand, double?> ms) =>
            [.. measured.Demands.Select(demand => (ms(demand) ?? 0) * pxPerMs)];
        elements.Add(
            ReadyMark.Of(Hand(Heights(demand => demand.FrettingMs), widthPx - EdgePx, Ink.Fretting))
        );
        elements.Add(ReadyMark.Of(Hand(Heights(demand => demand.PickingMs), widthPx - EdgePx, Ink.Picking)));
        var axis = new LineMark(new Point(0, RowPx / 2), new Point(widthPx, RowPx / 2), AxisPx)
        {
            Id = "",
            Kind = "strip-axis",
        };
        elements.Add(ReadyMark.Of(axis));
        var words = string.Create(
            CultureInfo.InvariantCulture,
            $"Time that both hands need for each of {NumberWords.Of(measured.Demands.Length, "note")}, at most {Math.Round(most)} ms."
        );
        return ScreenPicture.Of(elements, (widthPx, RowPx), "", words);
    }

    /// <summary>
    /// The first bar as tab without note values or what stands over it; as much as fits, which its sentence tells. Refused where
    /// not a single note fits.
    /// </summary>
    /// <param name="realization">What is played.</param>
    /// <param name="widthPx">Width, 100 to 2,000.</param>
    public static Outcome<ScreenPicture> FirstBar(Realization realization, double widthPx)
    {
        if (ScreenRules.Within(widthPx, (LeastPx, MostPx), "the width of the first bar") is { } fault)
        {
            return fault;
        }

        var bar = Bar(realization);
        return ScoreEngraver
            .Engrave(bar, TabOptions(widthPx))
            .Then(score =>
            {
                var system = score.Systems[0];
                var rest = score.Systems.Length > 1 ? ", its first part" : "";
                var places = system
                    .Columns.SelectMany(column => column.Heads)
                    .Where(head => !head.TiedBack)
                    .Select(head => head.Place);
                var words = $"The first bar as tab{rest}: {string.Join(", ", places)}.";
                return ScreenPicture.Of(Row(system) with { Description = words }, PxPerMm);
            });
    }

    // The first bar in which a note begins.
    private static Realization Bar(Realization realization)
    {
        var onset = realization.Notes[0].Note.Onset;
        var bar = (int)(onset / realization.Line.Recipe.Rhythm.Meter.Bar).Floor();
        return BarCut.Take(realization, bar, bar + 1)!;
    }

    // The tab in the middle of the row; what reaches out of the row is left out.
    private static Figure Row(ScoreSystem system)
    {
        const double rowMm = RowPx / PxPerMm;
        var tab = system.Tab!.Value;
        var row = new Box(double.NegativeInfinity, 0, double.PositiveInfinity, rowMm);
        return new Figure(
            system.WidthMm,
            rowMm,
            [
                .. system
                    .Marks.Select(mark => mark.Moved(0, (rowMm - tab.TopMm - tab.BottomMm) / 2))
                    .Where(mark => row.Holds(MarkBox.Of(mark))),
            ]
        );
    }

    private static ScoreOptions TabOptions(double widthPx) =>
        new()
        {
            WidthMm = widthPx / PxPerMm,
            StaffMm = ScreenLayout.StaffMm,
            GridMm = 1 / PxPerMm,
            Letters = ScreenLayout.LettersFor(PxPerMm),
            Layout = ScoreLayout.Tab,
            Fingers = false,
            Strokes = ShownStrokes.None,
            Groups = false,
            Counting = CountedBars.None,
            Positions = false,
            Begins = false,
            Ends = false,
            ShortLast = true,
        };

    // The times of a hand as one figure along the axis: bars that touch, so that its ruling can be read.
    private static PolygonMark Hand(ImmutableArray<double> heights, double widthPx, Ink ink)
    {
        const double middle = RowPx / 2;
        var (step, down) = (widthPx / heights.Length, ink == Ink.Fretting ? -1 : 1);
        var tops = heights.SelectMany(
            (height, i) =>
                new[]
                {
                    new Point(i * step, middle + (down * height)),
                    new Point((i + 1) * step, middle + (down * height)),
                }
        );
        return new PolygonMark([new(0, middle), .. tops, new(widthPx, middle)])
        {
            Id = "",
            Kind = "demand",
            Ink = ink,
            Filling = ink == Ink.Fretting ? Filling.Solid : Filling.Ruled,
            OutlineMm = ink == Ink.Fretting ? 0 : EdgePx,
        };
    }
}
