using System.Collections.Concurrent;
using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Fonts;

/// <summary>The music font: all lengths in staff spaces, y upwards as in the font.</summary>
public static class MusicFont
{
    /// <summary>Staff spaces in an em (SMuFL: an em is the height of a five-line staff).</summary>
    public const double SpacesPerEm = 4;

    private static readonly Lazy<FontCut> File = new(() =>
        new FontCut("bravura", FontResource.Read("bravura.otf"))
    );
    private static readonly Lazy<MusicMetadata> Facts = new(() =>
        MusicMetadata.Read(FontResource.Read("metadata.json"), GlyphNames.ByCodePoint.Values.ToHashSet())
    );
    private static readonly ConcurrentDictionary<int, GlyphShape> Shapes = new();

    internal static FontCut Cut => File.Value;

    /// <summary>A glyph's size and its anchors.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The font has no such glyph.</exception>
    public static GlyphShape Glyph(int codePoint) => Shapes.GetOrAdd(codePoint, Shape);

    /// <summary>Whether the font has a glyph for the code point.</summary>
    public static bool Has(int codePoint) => Cut.TryGlyph(codePoint, out _);

    /// <summary>A length that the font wants lines drawn with, such as <c>stemThickness</c> (SMuFL, engravingDefaults).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The font gives no such length.</exception>
    public static double Default(string name) =>
        Facts.Value.Defaults.TryGetValue(name, out var spaces)
            ? spaces
            : throw new ArgumentOutOfRangeException(nameof(name), name, "Not among the font's defaults.");

    internal static bool TryLetter(int codePoint, out (FontCut Cut, ushort Glyph) found)
    {
        // Flat, natural, sharp, double sharp, double flat: the signs of music within words.
        var isSign = codePoint is >= 0x266D and <= 0x266F or 0x1D12A or 0x1D12B;
        found = (Cut, 0);
        return isSign && Cut.TryGlyph(codePoint, out found.Glyph);
    }

    private static GlyphShape Shape(int codePoint)
    {
        if (!Cut.TryGlyph(codePoint, out var glyph))
        {
            throw new ArgumentOutOfRangeException(
                nameof(codePoint),
                $"U+{codePoint:X4}",
                "Not in the music font."
            );
        }

        var unitsPerSpace = Cut.UnitsPerEm / SpacesPerEm;
        var ink = Cut.OutlineOf(glyph).Ink ?? default;
        return new GlyphShape(
            codePoint,
            Cut.Advance(glyph) / unitsPerSpace,
            ink.Left / unitsPerSpace,
            -ink.Bottom / unitsPerSpace,
            ink.Right / unitsPerSpace,
            -ink.Top / unitsPerSpace,
            GlyphNames.ByCodePoint.TryGetValue(codePoint, out var name)
                ? Facts.Value.AnchorsOf(name)
                : ImmutableDictionary<string, (double X, double Y)>.Empty
        );
    }
}
