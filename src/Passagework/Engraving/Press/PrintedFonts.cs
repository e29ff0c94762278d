using Passagework.Engraving.Fonts;
using SkiaSharp;

namespace Passagework.Engraving.Press;

/// <summary>The fonts of one document, each with the letters that occur in it.</summary>
internal sealed class PrintedFonts : IDisposable
{
    private readonly Dictionary<FontCut, SKTypeface> _typefaces;

    public PrintedFonts(IEnumerable<ReadyMark> marks) =>
        _typefaces = marks
            .SelectMany(ready => ready.Line?.Glyphs ?? [])
            .GroupBy(letter => letter.Cut)
            .ToDictionary(
                letters => letters.Key,
                letters => letters.Key.Only(letters.Select(letter => letter.Glyph).ToHashSet())
            );

    /// <summary>The typeface to print a font's glyphs in.</summary>
    public SKTypeface Of(FontCut cut) => _typefaces.GetValueOrDefault(cut, cut.Typeface);

    public void Dispose()
    {
        foreach (var (cut, typeface) in _typefaces)
        {
            if (!ReferenceEquals(cut.Typeface, typeface))
                typeface.Dispose();
        }
    }
}
