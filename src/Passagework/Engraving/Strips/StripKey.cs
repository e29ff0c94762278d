using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Engraving.Sheets;

namespace Passagework.Engraving.Strips;

/// <summary>How to read a strip: only what occurs in it is explained.</summary>
internal sealed class StripKey(StripPlan plan)
{
    private const double SpaceMm = 1.75;
    private const double SignMm = 8;
    private const double GapMm = 7;
    private const double RowMm = 6.2;

    /// <summary>The key in rows of a width.</summary>
    public Figure Draw(double widthMm)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (x, y, row) = (0.0, 0.0, 0.0);
        foreach (var (sign, words) in Entries())
        {
            var text = TextBlock.Set(words, SheetStyles.Caption, widthMm - SignMm);
            var width = SignMm + text.WidthMm;
            if (x > 0 && x + width > widthMm)
            {
                (x, y, row) = (0, y + row, 0);
            }

            row = Math.Max(row, text.HeightMm - SheetStyles.Caption.LeadingMm + RowMm);

            var id = $"key-{marks.Count}";
            marks.AddRange(sign(id, new Point(x + (SignMm / 2) - 1, y + (RowMm / 2))));
            var corner = new Point(x + SignMm, y + ((RowMm - SheetStyles.Caption.LeadingMm) / 2));
            marks.AddRange(text.MarksAt(corner, $"{id}-words", "key"));
            x += width + GapMm;
        }

        return new Figure(widthMm, y + row, marks.ToImmutable());
    }

    /// <summary>Each sign, drawn around a point, with its meaning; only what occurs.</summary>
    public IEnumerable<(Func<string, Point, IEnumerable<Mark>> Sign, string Words)> Entries()
    {
        yield return (
            (id, at) => Bar(id, at, Ink.Fretting, Filling.Solid),
            "time the fretting hand needs to reach the note"
        );
        yield return ((id, at) => Bar(id, at, Ink.Picking, Filling.Ruled), "time the picking hand needs");
        yield return (
            (id, at) => [Limit(id, at)],
            $"all the time there is at {TempoFigure.Of(plan.TempoBpm)} beats a minute"
        );
        if (plan.IsExceeded)
        {
            yield return (Over, "what does not fit into it");
        }

        foreach (var kind in plan.Kinds)
        {
            yield return (
                (id, at) => new SignDrawing(id, InkOf(kind), null, SpaceMm).Draw(new MoveSign(kind, 1), at),
                WordsOf(kind)
            );
        }

        if (plan.IsGuessed)
        {
            yield return ((id, at) => [Ring(id, at)], "rests mostly on assumed values");
        }
    }

    private static IEnumerable<Mark> Over(string id, Point at)
    {
        var (width, height) = (1.9, 2.6);
        yield return new PolygonMark(PolygonMark.RectangleAbout(at, width, height))
        {
            Id = id,
            Kind = "key-sign",
            Filling = Filling.None,
            OutlineMm = 0.18,
        };
        yield return new LineMark(at.Moved(-1.4, -height / 2), at.Moved(1.4, -height / 2), 0.5)
        {
            Id = $"{id}-cap",
            Kind = "key-sign",
        };
    }

    private static Ink InkOf(MoveKind kind) => kind == MoveKind.Sweep ? Ink.Picking : Ink.Fretting;

    private static string WordsOf(MoveKind kind) =>
        kind switch
        {
            MoveKind.Skip => "a string is passed over (pointed: by the pick)",
            MoveKind.Roll => "one finger tilts to the next string",
            MoveKind.SameFinger => "one finger leaves and comes down elsewhere",
            MoveKind.ShiftUp => "the hand moves up the neck",
            MoveKind.ShiftDown => "the hand moves down the neck",
            _ => "one stroke runs on to the next string",
        };

    private static IEnumerable<Mark> Bar(string id, Point at, Ink ink, Filling filling)
    {
        var (width, height) = (1.9, 3.4);
        yield return new PolygonMark(PolygonMark.RectangleAbout(at, width, height))
        {
            Id = id,
            Kind = "key-sign",
            Ink = ink,
            Filling = filling,
            OutlineMm = filling == Filling.Solid ? 0 : 0.18,
        };
    }

    private static LineMark Limit(string id, Point at) =>
        new(at.Moved(-3, 0), at.Moved(3, 0), 0.19)
        {
            Id = id,
            Kind = "key-sign",
            DashMm = [1.75, 0.6, 0.4, 0.6],
        };

    private static CircleMark Ring(string id, Point at) =>
        new(at, 0.455)
        {
            Id = id,
            Kind = "key-sign",
            Filling = Filling.Paper,
            OutlineMm = 0.175,
        };
}
