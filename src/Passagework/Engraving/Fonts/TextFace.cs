using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Fonts;

/// <summary>A text face as its font files, one for each script; the first that holds a letter draws it.</summary>
internal sealed class TextFace
{
    private static readonly ImmutableArray<string> Scripts =
    [
        "latin",
        "latin-ext",
        "greek",
        "greek-ext",
        "cyrillic",
        "cyrillic-ext",
        "vietnamese",
    ];

    private static readonly ImmutableDictionary<Face, TextFace> Faces = new TextFace[]
    {
        new(Face.Serif, "alegreya", "400-normal"),
        new(Face.SerifItalic, "alegreya", "400-italic"),
        new(Face.SerifMedium, "alegreya", "500-normal"),
        new(Face.Sans, "alegreya-sans", "400-normal"),
        new(Face.SansItalic, "alegreya-sans", "400-italic"),
        new(Face.SansMedium, "alegreya-sans", "500-normal"),
        new(Face.SansBold, "alegreya-sans", "700-normal"),
        new(Face.SmallCaps, "alegreya-sans-sc", "500-normal"),
    }.ToImmutableDictionary(face => face._face);

    private readonly Face _face;
    private readonly ImmutableArray<Lazy<FontCut>> _cuts;

    private TextFace(Face face, string family, string cut)
    {
        _face = face;
        var tabular = family != "alegreya";
        _cuts =
        [
            .. Scripts.Select(script => new Lazy<FontCut>(() => Open($"{family}-{script}-{cut}", tabular))),
        ];
    }

    public static TextFace Of(Face face) => Faces[face];

    /// <summary>The font that draws a letter; false when none does.</summary>
    /// <param name="codePoint">The letter.</param>
    /// <param name="before">The font of the letter before, asked first for a sign that is set upon it.</param>
    /// <param name="found">The font and its glyph.</param>
    public bool TryFind(int codePoint, FontCut? before, out (FontCut Cut, ushort Glyph) found)
    {
        if (before is not null && before.TryGlyph(codePoint, out var same))
        {
            found = (before, same);
            return true;
        }

        foreach (var cut in _cuts)
        {
            if (cut.Value.TryGlyph(codePoint, out var glyph))
            {
                found = (cut.Value, glyph);
                return true;
            }
        }

        return MusicFont.TryLetter(codePoint, out found);
    }

    private static FontCut Open(string name, bool tabular)
    {
        var font = Sfnt.FromWoff(FontResource.Read(name + ".woff"));
        if (tabular)
            FigureForms.MakeTabular(font);

        var kerning = new Kerning(font.Table("GPOS"));
        // These rules are applied here; left in, they would draw unused glyphs into every PDF.
        font.Drop("GSUB", "GPOS", "GDEF", "STAT");
        return new FontCut(name, font, kerning);
    }
}
