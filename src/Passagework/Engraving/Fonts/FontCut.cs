using System.Collections.Concurrent;
using SkiaSharp;

namespace Passagework.Engraving.Fonts;

/// <summary>One font file: its glyphs, their outlines and widths.</summary>
internal sealed class FontCut
{
    private readonly SKFont _units;
    private readonly ConcurrentDictionary<ushort, Outline> _outlines = new();
    private readonly float[] _advances;
    private readonly Sfnt? _tables;
    private readonly Kerning? _kerning;

    /// <summary>Opens a font of letters.</summary>
    public FontCut(string name, Sfnt tables, Kerning kerning)
        : this(name, tables.ToBytes()) => (_tables, _kerning) = (tables, kerning);

    /// <summary>Opens a font file held in memory.</summary>
    /// <param name="name">Its name within the engine.</param>
    /// <param name="file">TrueType or OpenType.</param>
    public FontCut(string name, byte[] file)
    {
        Typeface = Open(name, file);
        UnitsPerEm = Typeface.UnitsPerEm;
        _units = Sized(Typeface, UnitsPerEm);
        var glyphs = Enumerable.Range(0, Typeface.GlyphCount).Select(glyph => (ushort)glyph).ToArray();
        // Whole units in the file; the font engine's scaling leaves them a thousandth off.
        _advances = Array.ConvertAll(_units.GetGlyphWidths(glyphs), MathF.Round);
    }

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
        _outlines.TryGetValue(glyph, out var known)
            ? known
            : _outlines.GetOrAdd(glyph, new Outline(_units.GetGlyphPath(glyph) ?? new SKPath()));

    /// <summary>A copy that holds no outlines but these; the font itself where it can't be divided.</summary>
    public SKTypeface Only(IReadOnlySet<ushort> glyphs) =>
        _tables is null ? Typeface : Open(Typeface.FamilyName, GlyphSubset.Of(_tables, glyphs));

    /// <summary>A typeface at a size, set for print: no hints, no rounding to pixels.</summary>
    public static SKFont Sized(SKTypeface typeface, double size) =>
        new(typeface, (float)size)
        {
            Hinting = SKFontHinting.None,
            Subpixel = true,
            LinearMetrics = true,
        };

    private static SKTypeface Open(string name, byte[] file)
    {
        using var data = SKData.CreateCopy(file);
        return SKTypeface.FromData(data)
            ?? throw new InvalidDataException($"The font {name} cannot be read.");
    }
}
