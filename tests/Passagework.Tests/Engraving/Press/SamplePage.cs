using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Press;

/// <summary>A page with every kind of mark in every manner: all signs, faces, anchors, fillings, inks, lines.</summary>
internal static class SamplePage
{
    public const string Markup = "<b>&amp;</b> \"and\" 'so' ]]> <script>";

    public static Page Page { get; } =
        new(180, 200, [.. Signs(), .. Words(), .. Lines(), .. Curves(), .. Figures(), .. Bar()])
        {
            Description = "Every kind of mark & <nothing> else.",
        };

    public static Document Document { get; } = new([Page, Page], "Fünf “Gruppen” & <mehr>", "Hedda Quill");

    private static IEnumerable<Mark> Signs() =>
        GlyphNames
            .ByCodePoint.Keys.Order()
            .Select(
                (code, i) => Glyph($"sign-{code:x}", code, 8 + (i % 20 * 8.6), 12 + (i / 20 * 11.5), 1.2)
            );

    private static IEnumerable<Mark> Words()
    {
        var texts = new[]
        {
            "Serif 0123456789: The run through five places, “Avoid Tom’s WAY”",
            "Serif italic 0123456789: letters over groups, façade, æther",
            "Serif medium: Straße, Łódź, Příliš žluťoučký, kāpēc",
            "Sans 0123456789: Быстрая гамма, ёжик – Ελληνικά με τόνους",
            "Sans italic 0123456789: Tiếng Việt, những ngón tay",
            "Sans medium 0123456789: " + Markup,
            "Sans bold 0123456789: B♭ major, F♯, G♮",
            "small capitals 0123456789: what to listen for",
        };
        return texts.Select(
            (text, i) =>
                new TextMark(text, new(8, 104 + (5.5 * i)), (Face)i, 4)
                {
                    Id = $"words-{i}",
                    Kind = "words",
                    TrackingEm = i == 7 ? 0.045 : 0,
                    Ink = i == 1 ? Ink.Soft : Ink.Main,
                }
        );
    }

    private static IEnumerable<Mark> Lines()
    {
        foreach (var ink in Enum.GetValues<Ink>())
        {
            var x = 120 + ((int)ink * 6);
            yield return Line($"ink-{ink}", new(x, 104), new(x + 4, 116)) with
            {
                Ink = ink,
                WidthMm = 1,
            };
        }

        yield return Line("dashed", new(120, 122), new(172, 122)) with
        {
            DashMm = [3, 1, 0.7, 1],
        };
        yield return Line("odd-dashes", new(120, 125), new(172, 125)) with
        {
            DashMm = [3, 1, 2],
        };
        yield return Line("round", new(121, 129), new(171, 131)) with
        {
            RoundEnds = true,
            WidthMm = 1.6,
        };
        yield return Line("square", new(121, 133), new(171, 135)) with
        {
            WidthMm = 1.6,
        };
        yield return Line("thin", new(120, 138), new(172, 138)) with
        {
            WidthMm = 0.1,
        };
        foreach (var (anchor, i) in Enum.GetValues<Anchor>().Select((anchor, i) => (anchor, i)))
        {
            yield return Line($"anchor-line-{i}", new(146, 140 + (4 * i)), new(146, 144 + (4 * i)));
            yield return new TextMark($"anchor {anchor}", new(146, 143.5 + (4 * i)), Face.SansBold, 3.6)
            {
                Id = $"anchor-{i}",
                Kind = "words",
                Anchor = anchor,
                Ink = Ink.Fretting,
            };
        }
    }

    private static IEnumerable<Mark> Curves()
    {
        yield return Curve("tie", new(8, 152), new(12, 149), new(20, 149), new(24, 152));
        yield return Curve("slur", new(30, 150), new(38, 156), new(60, 158), new(70, 152));
        yield return Curve("steep", new(80, 156), new(80, 148), new(88, 146), new(94, 146)) with
        {
            Ink = Ink.Picking,
            EndMm = 0.3,
            MiddleMm = 1.4,
        };
    }

    private static IEnumerable<Mark> Figures()
    {
        foreach (var (filling, i) in Enum.GetValues<Filling>().Select((filling, i) => (filling, i)))
        {
            var x = 8 + (i * 22);
            yield return Line($"under-{i}", new(x - 2, 167), new(x + 19, 165)) with
            {
                Ink = Ink.Staff,
            };
            yield return new PolygonMark([
                new(x, 160),
                new(x + 9, 162),
                new(x + 9, 171),
                new(x + 4, 168),
                new(x, 171),
            ])
            {
                Id = $"polygon-{i}",
                Kind = "figure",
                Filling = filling,
                OutlineMm = i % 2 == 0 ? 0 : 0.4,
                Ink = Ink.Fretting,
            };
            yield return new CircleMark(new(x + 14.5, 166), 4)
            {
                Id = $"circle-{i}",
                Kind = "figure",
                Filling = filling,
                OutlineMm = i % 2 == 0 ? 0.3 : 0.6,
                Ink = Ink.Picking,
            };
        }
    }

    private static IEnumerable<Mark> Bar()
    {
        const double space = 1.75;
        for (var i = 0; i < 5; i++)
        {
            var y = 182 + (i * space);
            yield return Line($"staff-{i}", new(8, y), new(172, y)) with
            {
                Ink = Ink.Staff,
            };
        }

        yield return Glyph("clef", Glyphs.GClef8vb, 9, 182 + (3 * space), space);
        for (var i = 0; i < 16; i++)
        {
            var x = 22 + (i * 9.2);
            var y = 182 + ((4 - (i % 4 * 0.5)) * space);
            yield return Glyph($"head-{i}", Glyphs.NoteheadBlack, x, y, space) with
            {
                Note = i,
            };
            yield return Line($"stem-{i}", new(x + 1.96, y - 0.3), new(x + 1.96, 181)) with
            {
                Note = i,
            };
            yield return new TextMark($"{i + 5}", new(x + 1, 196), Face.SansBold, 3.4)
            {
                Id = $"number-{i}",
                Kind = "tab-number",
                Anchor = Anchor.Middle,
                Note = i,
            };
        }

        for (var i = 0; i < 4; i++)
        {
            var left = 22 + (i * 4 * 9.2) + 1.85;
            yield return new PolygonMark([
                new(left, 180.6),
                new(left + 27.82, 180.2),
                new(left + 27.82, 181.1),
                new(left, 181.5),
            ])
            {
                Id = $"beam-{i}",
                Kind = "beam",
            };
        }
    }

    private static GlyphMark Glyph(string id, int code, double x, double y, double space) =>
        new(code, new Point(x, y), space) { Id = id, Kind = "sign" };

    private static LineMark Line(string id, Point from, Point to) =>
        new(from, to, 0.22) { Id = id, Kind = "line" };

    private static CurveMark Curve(string id, Point from, Point lean, Point back, Point to) =>
        new(from, lean, back, to, 0.175, 0.385) { Id = id, Kind = "curve" };
}
