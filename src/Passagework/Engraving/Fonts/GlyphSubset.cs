using System.Buffers.Binary;
using static Passagework.Engraving.Fonts.FeatureTable;

namespace Passagework.Engraving.Fonts;

/// <summary>
/// The same TrueType font with the outlines of some glyphs only, under the same numbers (OpenType specification, tables
/// <c>glyf</c> and <c>loca</c>). The PDF library embeds a font whole; so it is given no more than is printed.
/// </summary>
internal static class GlyphSubset
{
    private const int ComponentHeader = 4;
    private const int WordArguments = 0x0001;
    private const int HasScale = 0x0008;
    private const int MoreComponents = 0x0020;
    private const int HasTwoScales = 0x0040;
    private const int HasMatrix = 0x0080;

    /// <summary>The font file with these glyphs, the parts they are made of, and the sign for a missing glyph.</summary>
    public static byte[] Of(Sfnt font, IReadOnlySet<ushort> glyphs)
    {
        var kept = new HashSet<ushort> { 0 };
        foreach (var glyph in glyphs)
            Keep(font, glyph, kept);

        var isLong = IsLong(font);
        var outlines = new MemoryStream();
        var places = new byte[font.Table("loca").Length];
        var count = places.Length / (isLong ? 4 : 2);
        for (var glyph = 0; glyph < count; glyph++)
        {
            var at = (int)outlines.Length;
            if (isLong)
                BinaryPrimitives.WriteInt32BigEndian(places.AsSpan(4 * glyph), at);
            else
                BinaryPrimitives.WriteUInt16BigEndian(places.AsSpan(2 * glyph), (ushort)(at / 2));

            if (glyph < count - 1 && kept.Contains((ushort)glyph))
                outlines.Write(Outline(font, (ushort)glyph));
        }

        return font.With(
                ("glyf", outlines.ToArray()),
                ("loca", places),
                ("post", WithoutNames(font.Table("post")))
            )
            .ToBytes();
    }

    private static void Keep(Sfnt font, ushort glyph, HashSet<ushort> kept)
    {
        if (!kept.Add(glyph))
        {
            return;
        }

        var outline = Outline(font, glyph);
        // A glyph made of others says so by a negative number of contours.
        if (outline.IsEmpty || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
        {
            return;
        }

        int flags;
        var at = 10;
        do
        {
            flags = Word(outline, at);
            Keep(font, (ushort)Word(outline, at + 2), kept);
            at += ComponentHeader + ((flags & WordArguments) != 0 ? 4 : 2);
            at += (flags & (HasScale | HasTwoScales | HasMatrix)) switch
            {
                HasScale => 2,
                HasTwoScales => 4,
                HasMatrix => 8,
                _ => 0,
            };
        } while ((flags & MoreComponents) != 0);
    }

    private static ReadOnlySpan<byte> Outline(Sfnt font, ushort glyph)
    {
        var places = font.Table("loca");
        var (from, to) = IsLong(font)
            ? (
                BinaryPrimitives.ReadInt32BigEndian(places[(4 * glyph)..]),
                BinaryPrimitives.ReadInt32BigEndian(places[((4 * glyph) + 4)..])
            )
            : (2 * Word(places, 2 * glyph), 2 * Word(places, (2 * glyph) + 2));
        return font.Table("glyf")[from..to];
    }

    private static bool IsLong(Sfnt font) => Word(font.Table("head"), 50) != 0;

    // Version 3 of the table: the same head of 32 bytes, no names of glyphs.
    private static byte[] WithoutNames(ReadOnlySpan<byte> table)
    {
        var head = table[..32].ToArray();
        BinaryPrimitives.WriteInt32BigEndian(head, 0x00030000);
        return head;
    }
}
