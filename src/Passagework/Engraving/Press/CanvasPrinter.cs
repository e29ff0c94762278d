using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using SkiaSharp;

namespace Passagework.Engraving.Press;

/// <summary>Draws marks on a canvas whose unit is the millimetre.</summary>
internal sealed class CanvasPrinter : IDisposable
{
    private readonly SKCanvas _canvas;
    private readonly Palette _palette;
    private readonly PrintedFonts? _fonts;
    private readonly SKPaint _paint = new() { IsAntialias = true };

    /// <summary>Begins on a canvas.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="palette">Colours of the inks.</param>
    /// <param name="fonts">Fonts that letters and signs are written in, to be searched and copied; without, they are drawn as outlines.</param>
    public CanvasPrinter(SKCanvas canvas, Palette palette, PrintedFonts? fonts = null)
    {
        _canvas = canvas;
        _palette = palette;
        _fonts = fonts;
    }

    public void Print(ImmutableArray<ReadyMark> marks)
    {
        foreach (var ready in marks)
            Print(ready);
    }

    public void Dispose() => _paint.Dispose();

    private void Print(ReadyMark ready)
    {
        Fill(ready.Mark.Ink);
        switch (ready.Mark)
        {
            case GlyphMark glyph:
                PrintGlyph(glyph);
                break;
            case LineMark line:
                PrintLine(line);
                break;
            case CurveMark curve:
                PrintCurve(CurveShape.Of(curve));
                break;
            case TextMark text:
                PrintText(ready.Line!.Glyphs, ready.Start(text), text.SizeMm);
                break;
            case PolygonMark polygon:
                using (var path = Closed(polygon.Corners))
                    PrintFigure(path, polygon.Corners, polygon);

                break;
            case CircleMark circle:
                using (var path = Round(circle))
                    PrintFigure(path, Ruling.Corners(circle.Centre, circle.RadiusMm), circle);

                break;
        }
    }

    private void PrintGlyph(GlyphMark mark)
    {
        if (MusicFont.Cut.TryGlyph(mark.CodePoint, out var glyph))
            PrintText([new SetGlyph(MusicFont.Cut, glyph, 0)], mark.At, mark.SpaceMm * MusicFont.SpacesPerEm);
    }

    private void PrintText(ImmutableArray<SetGlyph> glyphs, Point start, double sizeMm)
    {
        if (_fonts is not null)
        {
            PrintLetters(_fonts, glyphs, start, sizeMm);
            return;
        }

        foreach (var (cut, glyph, x, raise) in glyphs)
        {
            var scale = (float)(sizeMm / cut.UnitsPerEm);
            _canvas.Save();
            _canvas.Translate((float)(start.X + (x * sizeMm)), (float)(start.Y - (raise * sizeMm)));
            _canvas.Scale(scale, scale);
            _canvas.DrawPath(cut.OutlineOf(glyph).Path, _paint);
            _canvas.Restore();
        }
    }

    private void PrintLetters(PrintedFonts fonts, ImmutableArray<SetGlyph> glyphs, Point start, double sizeMm)
    {
        for (var from = 0; from < glyphs.Length; )
        {
            var cut = glyphs[from].Cut;
            var to = from;
            while (to < glyphs.Length && ReferenceEquals(glyphs[to].Cut, cut))
                to++;

            var run = glyphs[from..to];
            using var font = FontCut.Sized(fonts.Of(cut), sizeMm);
            using var builder = new SKTextBlobBuilder();
            builder.AddPositionedRun(
                [.. run.Select(letter => letter.Glyph)],
                font,
                [.. run.Select(letter => At(new Point(letter.XEm * sizeMm, -letter.RaiseEm * sizeMm)))]
            );
            using var blob = builder.Build();
            _canvas.DrawText(blob, (float)start.X, (float)start.Y, _paint);
            from = to;
        }
    }

    private void PrintLine(LineMark line)
    {
        Stroke(line.Ink, line.WidthMm);
        _paint.StrokeCap = line.RoundEnds ? SKStrokeCap.Round : SKStrokeCap.Butt;
        using var dash = line.DashMm.IsEmpty ? null : SKPathEffect.CreateDash(Pairs(line.DashMm), 0);
        _paint.PathEffect = dash;
        _canvas.DrawLine((float)line.From.X, (float)line.From.Y, (float)line.To.X, (float)line.To.Y, _paint);
        _paint.PathEffect = null;
    }

    private void PrintCurve(CurveShape shape)
    {
        var curve = shape.Curve;
        using var outline = new SKPathBuilder();
        outline.MoveTo(At(curve.From));
        outline.CubicTo(At(shape.Outer.Lean), At(shape.Outer.Back), At(curve.To));
        outline.CubicTo(At(shape.Inner.Back), At(shape.Inner.Lean), At(curve.From));
        outline.Close();
        using var path = outline.Detach();
        Stroke(curve.Ink, curve.EndMm);
        _paint.Style = curve.EndMm > 0 ? SKPaintStyle.StrokeAndFill : SKPaintStyle.Fill;
        _paint.StrokeJoin = SKStrokeJoin.Round;
        _canvas.DrawPath(path, _paint);
    }

    private void PrintFigure(SKPath path, IReadOnlyList<Point> corners, Mark mark)
    {
        var (filling, outlineMm) = mark switch
        {
            PolygonMark polygon => (polygon.Filling, polygon.OutlineMm),
            CircleMark circle => (circle.Filling, circle.OutlineMm),
            _ => (Filling.None, 0),
        };
        if (filling is Filling.Paper or Filling.Ruled)
        {
            Fill(Ink.Paper);
            _canvas.DrawPath(path, _paint);
        }

        Fill(mark.Ink);
        if (filling == Filling.Solid)
            _canvas.DrawPath(path, _paint);
        if (filling == Filling.Ruled)
        {
            using var lines = Closed([.. Ruling.Lines(corners)]);
            _canvas.DrawPath(lines, _paint);
        }

        if (outlineMm > 0)
        {
            Stroke(mark.Ink, outlineMm);
            _paint.StrokeJoin = SKStrokeJoin.Miter;
            _canvas.DrawPath(path, _paint);
        }
    }

    private void Fill(Ink ink)
    {
        _paint.Style = SKPaintStyle.Fill;
        _paint.Color = new SKColor(0xFF000000 | (uint)_palette.Of(ink));
    }

    private void Stroke(Ink ink, double widthMm)
    {
        Fill(ink);
        _paint.Style = SKPaintStyle.Stroke;
        _paint.StrokeWidth = (float)widthMm;
        _paint.StrokeCap = SKStrokeCap.Butt;
    }

    private static SKPath Closed(params IReadOnlyList<IReadOnlyList<Point>> figures)
    {
        using var outline = new SKPathBuilder();
        foreach (var corners in figures)
            outline.AddPoly([.. corners.Select(At)], close: true);

        return outline.Detach();
    }

    private static SKPath Round(CircleMark circle)
    {
        using var outline = new SKPathBuilder();
        outline.AddCircle((float)circle.Centre.X, (float)circle.Centre.Y, (float)circle.RadiusMm);
        return outline.Detach();
    }

    // A list of odd length is run through twice, so that ink and gap change places (as in SVG).
    private static float[] Pairs(ImmutableArray<double> dashMm)
    {
        var once = dashMm.Select(length => (float)length).ToArray();
        return once.Length % 2 == 0 ? once : [.. once, .. once];
    }

    private static SKPoint At(Point point) => new((float)point.X, (float)point.Y);
}
