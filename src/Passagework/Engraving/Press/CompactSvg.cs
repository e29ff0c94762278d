using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Press;

/// <summary>
/// Gathers marks that are drawn alike into one element each, for a page that changes while one looks at it: few elements, few
/// bytes. What the elements refer to (classes, markers, rulings) is the page's, see <see cref="SignDefs"/>.
/// </summary>
/// <param name="frame">How millimetres become pixels.</param>
internal sealed class CompactSvg(PxFrame frame)
{
    /// <summary>Places after the point of a length in pixels.</summary>
    public const int PxPlaces = 1;

    private const int LongestInRow = 4;
    private readonly Dictionary<Pen, CompactPath> _paths = [];
    private readonly Dictionary<(string Marker, Ink Ink, double SpacePx), CompactSigns> _signs = [];
    private readonly Dictionary<RowStyle, CompactRow> _rows = [];
    private readonly List<ICompactElement> _elements = [];

    /// <summary>Takes a mark in; of two that lie over each other the later one is on top only within its layer.</summary>
    public void Add(ReadyMark ready)
    {
        switch (ready.Mark)
        {
            case GlyphMark mark:
                AddSign(mark.CodePoint, mark.Ink, frame.Length(mark.SpaceMm), frame.At(mark.At));
                break;
            case TextMark mark:
                AddText(mark, ready);
                break;
            case LineMark mark:
                Path(PenOf(mark)).Add(mark);
                break;
            case CurveMark mark:
                Path(new Pen(mark.Ink, Filling.Solid, Width(mark.EndMm)) { IsRound = true }).Add(mark);
                break;
            case PolygonMark { Filling: Filling.Solid, OutlineMm: 0 } mark when AsLine(mark) is { } line:
                Path(PenOf(line)).Add(line);
                break;
            case PolygonMark mark:
                Path(new Pen(mark.Ink, mark.Filling, Width(mark.OutlineMm))).Add(mark);
                break;
            case CircleMark mark:
                AddCircle(mark);
                break;
        }
    }

    /// <summary>Puts a marker of the page at a point.</summary>
    /// <param name="marker">Its id.</param>
    /// <param name="ink">The ink that it is drawn in.</param>
    /// <param name="spaceMm">One staff space.</param>
    /// <param name="at">Where, in millimetres.</param>
    public void Add(string marker, Ink ink, double spaceMm, Point at) =>
        Signs(marker, ink, frame.Length(spaceMm)).Add(frame.At(at));

    /// <summary>The elements, lower layers first; texts are anchored at their middle where they do not say otherwise.</summary>
    public void Write(StringBuilder svg)
    {
        foreach (var layer in _elements.GroupBy(element => element.Layer).OrderBy(layer => layer.Key))
        {
            foreach (var alike in layer.GroupBy(element => element.Attributes, StringComparer.Ordinal))
            {
                WriteAlike(svg, alike.Key, [.. alike]);
            }
        }
    }

    // A box that is not flat, as bars are, is a thick upright line.
    private static LineMark? AsLine(PolygonMark box) =>
        box.Corners is [var a, var b, var c, var d]
        && (a.Y, b.X, c.Y, d.X) == (b.Y, c.X, d.Y, a.X)
        && Math.Abs(b.X - a.X) <= 2 * Math.Abs(c.Y - a.Y)
            ? new LineMark(
                new Point((a.X + b.X) / 2, a.Y),
                new Point((a.X + b.X) / 2, c.Y),
                Math.Abs(b.X - a.X)
            )
            {
                Id = box.Id,
                Kind = box.Kind,
                Ink = box.Ink,
            }
            : null;

    // A dot of its ink, and upon it a smaller one of the paper where it is hollow.
    private void AddCircle(CircleMark circle)
    {
        var isHollow = circle.Filling == Filling.Paper;
        var outer = new Pen(circle.Ink, Filling.None, Width((2 * circle.RadiusMm) + circle.OutlineMm));
        Path(outer with { IsRound = true, Covers = isHollow }).Add(circle.Centre);
        if (isHollow)
        {
            var inner = new Pen(Ink.Paper, Filling.None, Width((2 * circle.RadiusMm) - circle.OutlineMm));
            Path(inner with { IsRound = true, Covers = true }).Add(circle.Centre);
        }
    }

    private static void WriteAlike(StringBuilder svg, string attributes, List<ICompactElement> elements)
    {
        if (elements is [var single])
        {
            single.Write(svg, attributes);
            return;
        }

        svg.Append("<g").Append(attributes).Append('>');
        elements.ForEach(element => element.Write(svg, ""));
        svg.Append("</g>");
    }

    private Pen PenOf(LineMark line) =>
        new(line.Ink, Filling.None, Width(line.WidthMm))
        {
            IsRound = line.RoundEnds,
            Dash = string.Join(
                ' ',
                line.DashMm.Select(length =>
                    Math.Round(frame.Length(length), PxPlaces).ToString(CultureInfo.InvariantCulture)
                )
            ),
        };

    // Short words become part of their row, letter by letter; signs of music among letters are drawn, not written.
    private void AddText(TextMark mark, ReadyMark ready)
    {
        var glyphs = ready.Line!.Glyphs;
        var style = new RowStyle(
            mark.Ink,
            mark.Face,
            Math.Round(frame.Length(mark.SizeMm), PxPlaces),
            Math.Round(frame.Length(mark.At.Y), PxPlaces)
        );
        var isPlain = glyphs.All(glyph => !ReferenceEquals(glyph.Cut, MusicFont.Cut));
        var letters = mark.Text.EnumerateRunes().ToList();
        var isRow = glyphs.Length == letters.Count && mark.TrackingEm == 0 && !mark.Text.Contains(' ');
        if (!isRow || (isPlain && letters.Count > LongestInRow))
        {
            _elements.Add(new CompactWords(mark, style, frame.X(mark.At.X)));
            return;
        }

        var start = frame.At(ready.Start(mark));
        for (var i = 0; i < glyphs.Length; i++)
        {
            AddLetter(letters[i], glyphs[i], start, style);
        }
    }

    private void AddLetter(Rune letter, SetGlyph glyph, Point start, RowStyle style)
    {
        if (ReferenceEquals(glyph.Cut, MusicFont.Cut))
        {
            var at = start.Moved(glyph.XEm * style.SizePx, -glyph.RaiseEm * style.SizePx);
            AddSign(letter.Value, style.Ink, style.SizePx / MusicFont.SpacesPerEm, at);
            return;
        }

        var middle = glyph.XEm + (glyph.Cut.Advance(glyph.Glyph) / glyph.Cut.UnitsPerEm / 2);
        Row(style).Add(letter, start.X + (middle * style.SizePx));
    }

    private CompactPath Path(Pen pen) => Element(_paths, pen, key => new CompactPath(key, frame));

    private void AddSign(int codePoint, Ink ink, double spacePx, Point at)
    {
        if (SignDefs.Has(codePoint, ink))
            Signs(SignDefs.Id(codePoint, ink), ink, spacePx).Add(at);
        else
            _elements.Add(new CompactOutline(codePoint, ink, at, spacePx));
    }

    private CompactSigns Signs(string marker, Ink ink, double spacePx) =>
        Element(
            _signs,
            (Marker: marker, Ink: ink, SpacePx: Math.Round(spacePx, SvgOutput.MmPlaces)),
            key => new CompactSigns(key.Marker, key.Ink, key.SpacePx)
        );

    private CompactRow Row(RowStyle style) => Element(_rows, style, key => new CompactRow(key));

    private TElement Element<TKey, TElement>(
        Dictionary<TKey, TElement> known,
        TKey key,
        Func<TKey, TElement> make
    )
        where TKey : notnull
        where TElement : ICompactElement
    {
        if (!known.TryGetValue(key, out var element))
        {
            element = make(key);
            known.Add(key, element);
            _elements.Add(element);
        }

        return element;
    }

    private double Width(double mm) => Math.Round(frame.Length(mm), SvgOutput.MmPlaces);
}
