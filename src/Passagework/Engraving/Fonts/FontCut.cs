using System.Collections.Concurrent;
using SkiaSharp;

namespace Passagework.Engraving.Fonts;

/// <summary>One font file: its glyphs, their outlines and widths.</summary>
internal sealed class FontCut
{
    private readonly SKFont _units;
    private readonly ConcurrentDictionary<ushort, Outline> _outlines = new();
    private readonly float[] _advances;
    private readonly Kerning? _kerning;

    /// <summary>Opens a font file held in memory.</summary>
    /// <param name="name">Short name, unique among our fonts.</param>
    /// <param name="file">TrueType or OpenType.</param>
    /// <param name="kerning">Distances between glyphs; null for a font of signs.</param>
    public FontCut(string name, byte[] file, Kerning? kerning = null)
    {
        Name = name;
        _kerning = kerning;
        using var data = SKData.CreateCopy(file);
        Typeface =
            SKTypeface.FromData(data) ?? throw new InvalidDataException($"The font {name} cannot be read.");
        UnitsPerEm = Typeface.UnitsPerEm;
        _units = Sized(UnitsPerEm);
        var glyphs = Enumerable.Range(0, Typeface.GlyphCount).Select(glyph => (ushort)glyph).ToArray();
        // Whole units in the file; the font engine's scaling leaves them a thousandth off.
        _advances = Array.ConvertAll(_units.GetGlyphWidths(glyphs), MathF.Round);
    }

    public string Name { get; }

    public SKTypeface Typeface { get; }

    public int UnitsPerEm { get; }

    /// <summary>The glyph of a letter; false when the font has none.</summary>
    public bool TryGlyph(int codePoint, out ushort glyph)
    {
        glyph = _units.GetGlyph(codePoint);
        return glyph != 0;
    }

    /// <summary>Width of the glyph with its side bearings, in font units.</summary>
    public double Advance(ushort glyph) => _advances[glyph];

    /// <summary>What two neighbours add to the first one's width, in font units.</summary>
    public double Kern(ushort first, ushort second) => _kerning?.Between(first, second) ?? 0;

    /// <summary>The glyph's outline in font units.</summary>
    public Outline OutlineOf(ushort glyph) =>
        _outlines.GetOrAdd(glyph, id => new Outline(_units.GetGlyphPath(id) ?? new SKPath()));

    /// <summary>The font at a size, set for print: no hints, no rounding to pixels.</summary>
    public SKFont Sized(double size) =>
        new(Typeface, (float)size)
        {
            Hinting = SKFontHinting.None,
            Subpixel = true,
            LinearMetrics = true,
        };
}
