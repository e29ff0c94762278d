using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Fonts;

/// <summary>A glyph of a line of text.</summary>
/// <param name="Cut">The font file it comes from.</param>
/// <param name="Glyph">Its number there.</param>
/// <param name="XEm">Its origin, in ems from the start of the line.</param>
/// <param name="RaiseEm">How far its origin lies above the baseline, in ems.</param>
internal readonly record struct SetGlyph(FontCut Cut, ushort Glyph, double XEm, double RaiseEm = 0);

/// <summary>A text set in one line: which glyphs stand where.</summary>
internal sealed class TextLine
{
    // A flat or sharp among words has a little air at its sides, which the font's signs lack. Chosen by us.
    private const double SignGapEm = 0.02;

    // Figures, counts and letters are set over and over on a page; they are kept, as the outlines of a font are.
    private const int MostKeptLetters = 4;
    private const int MostKept = 4096;
    private static readonly ConcurrentDictionary<(string Text, Face Face), TextLine> Kept = new();
    private readonly Lazy<Box> _inkEm;

    private TextLine(ImmutableArray<SetGlyph> glyphs, double widthEm, ImmutableArray<Rune> missing)
    {
        Glyphs = glyphs;
        WidthEm = widthEm;
        Missing = missing;
        _inkEm = new(InkOfEm);
    }

    public ImmutableArray<SetGlyph> Glyphs { get; }

    /// <summary>To where a next letter would begin.</summary>
    public double WidthEm { get; }

    /// <summary>The letters that the face has no glyph for, each once; they take half an em and draw nothing.</summary>
    public ImmutableArray<Rune> Missing { get; }

    public static TextLine Set(string text, Face face, double trackingEm)
    {
        if (text.Length > MostKeptLetters || trackingEm != 0)
        {
            return SetAnew(text, face, trackingEm);
        }

        if (!Kept.TryGetValue((text, face), out var line))
        {
            line = SetAnew(text, face, 0);
            if (Kept.Count < MostKept)
            {
                Kept.TryAdd((text, face), line);
            }
        }

        return line;
    }

    private static TextLine SetAnew(string text, Face face, double trackingEm)
    {
        const double blankEm = 0.5;
        var fonts = TextFace.Of(face);
        var glyphs = ImmutableArray.CreateBuilder<SetGlyph>(text.Length);
        var missing = new List<Rune>();
        var x = 0.0;
        SetGlyph? before = null;
        foreach (var letter in Composition.Compose(text))
        {
            if (!fonts.TryFind(letter.Value, before?.Cut, out var found))
            {
                if (!missing.Contains(letter))
                    missing.Add(letter);
                x += blankEm + trackingEm;
                before = null;
                continue;
            }

            var (cut, glyph) = found;
            var isSign = ReferenceEquals(cut, MusicFont.Cut);
            if (before is { } left && ReferenceEquals(left.Cut, cut))
                x += cut.Kern(left.Glyph, glyph) / cut.UnitsPerEm;
            if (isSign)
                x += SignGapEm;
            before = new SetGlyph(cut, glyph, x, isSign ? OnBaseline(cut, glyph) : 0);
            glyphs.Add(before.Value);
            x += (cut.Advance(glyph) / cut.UnitsPerEm) + trackingEm;
            if (isSign)
                x += SignGapEm;
        }

        return new TextLine(glyphs.ToImmutable(), x, [.. missing]);
    }

    /// <summary>The box of the ink at a size, relative to the start of the baseline; empty at the start for blanks.</summary>
    public Box InkAt(double sizeMm)
    {
        var ink = _inkEm.Value;
        return new Box(ink.Left * sizeMm, ink.Top * sizeMm, ink.Right * sizeMm, ink.Bottom * sizeMm);
    }

    private Box InkOfEm()
    {
        Box? ink = null;
        foreach (var (cut, glyph, x, raise) in Glyphs)
        {
            if (cut.OutlineOf(glyph).Ink is not { } shape)
                continue;

            double em = cut.UnitsPerEm;
            var box = new Box(shape.Left / em, shape.Top / em, shape.Right / em, shape.Bottom / em);
            box = box.Moved(x, -raise);
            ink = ink?.With(box) ?? box;
        }

        return ink ?? default;
    }

    // On a staff a sign lies around its pitch; among words it stands on the line.
    private static double OnBaseline(FontCut cut, ushort glyph) =>
        (cut.OutlineOf(glyph).Ink?.Bottom ?? 0) / cut.UnitsPerEm;
}
