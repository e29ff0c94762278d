using static Passagework.Engraving.Fonts.FeatureTable;

namespace Passagework.Engraving.Fonts;

/// <summary>
/// Makes a font's figures lining and equally wide, as tables and tab want them: its letter map is changed to lead there,
/// so that text taken out of a PDF still reads as figures.
/// </summary>
internal static class FigureForms
{
    private const int SingleSubstitution = 1;
    private const int Extension = 7;

    /// <summary>Changes the font's letter map; a font without figures or without other forms stays as it is.</summary>
    public static void MakeTabular(Sfnt font)
    {
        var forms = font.Table("GSUB");
        var letters = LetterMap.Read(font.Table("cmap"));
        foreach (var at in Subtables(forms, ["lnum", "tnum"], SingleSubstitution, Extension))
        {
            var substitutes = Substitutes(forms, at);
            for (int digit = '0'; digit <= '9'; digit++)
            {
                if (
                    letters.TryGetValue(digit, out var glyph) && substitutes.TryGetValue(glyph, out var other)
                )
                    letters[digit] = other;
            }
        }

        font.Replace("cmap", LetterMap.Write(letters));
    }

    private static Dictionary<ushort, ushort> Substitutes(ReadOnlySpan<byte> table, int at)
    {
        var substitutes = new Dictionary<ushort, ushort>();
        var covered = Covered(table, at + Word(table, at + 2));
        for (var i = 0; i < covered.Count; i++)
        {
            substitutes[covered[i]] =
                Word(table, at) == 1
                    ? (ushort)((covered[i] + Word(table, at + 4)) & 0xFFFF)
                    : (ushort)Word(table, at + 6 + (2 * i));
        }

        return substitutes;
    }
}
