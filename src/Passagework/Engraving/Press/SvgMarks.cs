using System.Collections.Immutable;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Press;

/// <summary>Writes marks as SVG elements, and gathers the outlines that they use.</summary>
internal sealed class SvgMarks(SvgStyle style)
{
    private const int ScalePlaces = 6;
    private const int UnitPlaces = 0;

    private readonly Dictionary<(FontCut Cut, ushort Glyph), int> _numbers = [];

    /// <summary>The elements, in the order of the marks.</summary>
    public StringBuilder Elements { get; } = new();

    /// <summary>The outlines that they refer to, each once.</summary>
    public StringBuilder Outlines { get; } = new();

    public void Write(ReadyMark ready)
    {
        switch (ready.Mark)
        {
            case GlyphMark mark:
                WriteGlyph(mark);
                break;
            case TextMark mark:
                WriteText(mark, ready);
                break;
            case LineMark mark:
                WriteLine(mark);
                break;
            case CurveMark mark:
                WriteCurve(mark);
                break;
            case PolygonMark mark:
                WriteFigure(mark, Around(mark.Corners), mark.Corners, (mark.Filling, mark.OutlineMm));
                break;
            case CircleMark mark:
                var corners = mark.Filling == Filling.Ruled ? Ruling.Corners(mark.Centre, mark.RadiusMm) : [];
                WriteFigure(mark, Around(mark), corners, (mark.Filling, mark.OutlineMm));
                break;
        }
    }

    private void WriteGlyph(GlyphMark mark)
    {
        if (!MusicFont.Cut.TryGlyph(mark.CodePoint, out var glyph))
        {
            return;
        }

        Begin("use", mark).Attribute("href", Reference(MusicFont.Cut, glyph));
        Placed(mark.At, mark.SpaceMm * MusicFont.SpacesPerEm / MusicFont.Cut.UnitsPerEm).Append("/>");
    }

    private void WriteText(TextMark mark, ReadyMark ready)
    {
        var glyphs = ready.Line!.Glyphs;
        if (glyphs.IsEmpty)
        {
            return;
        }

        // The signs of music within words come from the music font, which a page does not bring along.
        var isPlain = glyphs.All(glyph => !ReferenceEquals(glyph.Cut, MusicFont.Cut));
        if (style.Words == SvgWords.Text && isPlain)
            WriteLetters(mark);
        else
            WriteOutlines(mark, ready, glyphs);
    }

    private void WriteLetters(TextMark mark)
    {
        Begin("text", mark, SvgStyleSheet.Class(mark.Face))
            .Attribute("x", mark.At.X)
            .Attribute("y", mark.At.Y)
            .Attribute("font-size", mark.SizeMm);
        var anchor = mark.Anchor switch
        {
            Anchor.Middle => "middle",
            Anchor.End => "end",
            _ => null,
        };
        Elements.Attribute("text-anchor", anchor);
        if (mark.TrackingEm != 0)
            Elements.Attribute("letter-spacing", mark.TrackingEm * mark.SizeMm);

        Elements.Append('>').Escaped(mark.Text).Append("</text>");
    }

    private void WriteOutlines(TextMark mark, ReadyMark ready, ImmutableArray<SetGlyph> glyphs)
    {
        var start = ready.Start(mark);
        var scale = mark.SizeMm / glyphs[0].Cut.UnitsPerEm;
        var isSingle = glyphs.Length == 1;
        Begin(isSingle ? "use" : "g", mark).Attribute("role", "img").Attribute("aria-label", mark.Text);
        if (isSingle)
        {
            Elements.Attribute("href", Reference(glyphs[0].Cut, glyphs[0].Glyph));
            Placed(start.Moved(glyphs[0].XEm * mark.SizeMm, -glyphs[0].RaiseEm * mark.SizeMm), scale)
                .Append("/>");
            return;
        }

        Placed(start, scale).Append('>');
        foreach (var (cut, glyph, x, raise) in glyphs)
        {
            if (cut.OutlineOf(glyph).Ink is null)
                continue;

            Elements.Append("<use").Attribute("href", Reference(cut, glyph));
            if (x != 0)
                Elements.Append(" x=\"").Number(x * cut.UnitsPerEm, UnitPlaces).Append('"');
            if (raise != 0)
                Elements.Append(" y=\"").Number(-raise * cut.UnitsPerEm, UnitPlaces).Append('"');
            Elements.Append("/>");
        }

        Elements.Append("</g>");
    }

    private void WriteLine(LineMark mark)
    {
        Begin("path", mark).Append(" d=\"M").Pair(mark.From);
        if (mark.From.Y == mark.To.Y)
            Elements.Append('H').Number(mark.To.X);
        else if (mark.From.X == mark.To.X)
            Elements.Append('V').Number(mark.To.Y);
        else
            Elements.Append('L').Pair(mark.To);

        Elements.Append('"');
        Stroked(mark.WidthMm);
        if (!mark.DashMm.IsEmpty)
        {
            Elements.Append(" stroke-dasharray=\"");
            foreach (var length in mark.DashMm)
                Elements.Number(length).Append(' ');
            Elements.Length--;
            Elements.Append('"');
        }

        if (mark.RoundEnds)
            Elements.Attribute("stroke-linecap", "round");
        Elements.Append("/>");
    }

    private void WriteCurve(CurveMark mark)
    {
        var shape = CurveShape.Of(mark);
        Begin("path", mark).Append(" d=\"M").Pair(mark.From);
        Elements
            .Append('C')
            .Pair(shape.Outer.Lean)
            .Append(' ')
            .Pair(shape.Outer.Back)
            .Append(' ')
            .Pair(mark.To);
        Elements
            .Append('C')
            .Pair(shape.Inner.Back)
            .Append(' ')
            .Pair(shape.Inner.Lean)
            .Append(' ')
            .Pair(mark.From);
        Elements.Append("z\"");
        Stroked(mark.EndMm);
        Elements.Attribute("stroke-linejoin", "round").Append("/>");
    }

    private void WriteFigure(
        Mark mark,
        string around,
        IReadOnlyList<Point> corners,
        (Filling Filling, double OutlineMm) how
    )
    {
        if (how.Filling == Filling.Ruled)
        {
            Begin("g", mark)
                .Append("><path class=\"")
                .Append(SvgStyleSheet.Ground)
                .Append('"')
                .Attribute("d", around)
                .Append("/>");
            var lines = string.Concat(Ruling.Lines(corners).Select(Around));
            Elements.Append("<path").Attribute("d", lines).Append("/>");
            if (how.OutlineMm > 0)
            {
                Elements.Append("<path").Attribute("d", around).Attribute("fill", "none");
                Stroked(how.OutlineMm).Append("/>");
            }

            Elements.Append("</g>");
            return;
        }

        Begin("path", mark, how.Filling == Filling.Paper ? SvgStyleSheet.Ground : null)
            .Attribute("d", around);
        if (how.Filling == Filling.None)
            Elements.Attribute("fill", "none");
        if (how.OutlineMm > 0)
            Stroked(how.OutlineMm);
        Elements.Append("/>");
    }

    private StringBuilder Begin(string element, Mark mark, string? secondClass = null)
    {
        Elements.Append('<').Append(element).Append(" id=\"").Escaped(style.IdPrefix).Escaped(mark.Id);
        Elements.Append("\" class=\"").Append(SvgStyleSheet.Class(mark.Ink));
        if (secondClass is not null)
            Elements.Append(' ').Append(secondClass);

        Elements.Append('"').Attribute("data-kind", mark.Kind);
        if (mark.Note is { } note)
            Elements.Append(" data-note=\"").Append(note).Append('"');

        return Elements;
    }

    private StringBuilder Placed(Point at, double scale) =>
        Elements
            .Append(" transform=\"translate(")
            .Pair(at)
            .Append(")scale(")
            .Number(scale, ScalePlaces)
            .Append(")\"");

    private StringBuilder Stroked(double widthMm) =>
        Elements.Append(" stroke=\"currentColor\"").Attribute("stroke-width", widthMm);

    private string Reference(FontCut cut, ushort glyph)
    {
        if (!_numbers.TryGetValue((cut, glyph), out var number))
        {
            number = _numbers.Count + 1;
            _numbers.Add((cut, glyph), number);
            Outlines
                .Append("<path id=\"")
                .Escaped(style.IdPrefix)
                .Append('_')
                .Append(number)
                .Append("\" d=\"");
            Outlines.Append(cut.OutlineOf(glyph).Data).Append("\"/>");
        }

        return $"#{style.IdPrefix}_{number}";
    }

    private static string Around(IReadOnlyList<Point> corners)
    {
        var data = new StringBuilder("M");
        foreach (var corner in corners)
            data.Pair(corner).Append('L');

        data.Length--;
        return data.Append('z').ToString();
    }

    private static string Around(CircleMark circle)
    {
        var radius = new StringBuilder("A")
            .Number(circle.RadiusMm)
            .Append(' ')
            .Number(circle.RadiusMm)
            .Append(" 0 1 1 ");
        return new StringBuilder("M")
            .Pair(circle.Centre.Moved(-circle.RadiusMm, 0))
            .Append(radius)
            .Pair(circle.Centre.Moved(circle.RadiusMm, 0))
            .Append(radius)
            .Pair(circle.Centre.Moved(-circle.RadiusMm, 0))
            .Append('z')
            .ToString();
    }
}
