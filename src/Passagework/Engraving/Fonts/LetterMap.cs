using System.Buffers.Binary;

namespace Passagework.Engraving.Fonts;

/// <summary>Which glyph draws which letter: the font's table <c>cmap</c> (OpenType specification).</summary>
internal static class LetterMap
{
    private const int SegmentFormat = 4;

    /// <summary>Reads the map of the basic plane; format 4, which every font of ours has.</summary>
    public static Dictionary<int, ushort> Read(ReadOnlySpan<byte> table)
    {
        for (var i = 0; i < Word(table, 2); i++)
        {
            var at = BinaryPrimitives.ReadInt32BigEndian(table[(4 + (8 * i) + 4)..]);
            if (Word(table, at) == SegmentFormat)
            {
                return ReadSegments(table[at..]);
            }
        }

        throw new InvalidDataException("The font has no letter map of format 4.");
    }

    /// <summary>A table with one map of format 12, a group for each letter.</summary>
    public static byte[] Write(IReadOnlyDictionary<int, ushort> glyphs)
    {
        const int start = 12;
        const int header = 16;
        const int group = 12;
        var table = new byte[start + header + (group * glyphs.Count)];
        var span = table.AsSpan();
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteInt32BigEndian(span[8..], start);
        BinaryPrimitives.WriteUInt16BigEndian(span[start..], 12);
        BinaryPrimitives.WriteInt32BigEndian(span[(start + 4)..], table.Length - start);
        BinaryPrimitives.WriteInt32BigEndian(span[(start + 12)..], glyphs.Count);
        var at = start + header;
        foreach (var (letter, glyph) in glyphs.OrderBy(pair => pair.Key))
        {
            BinaryPrimitives.WriteInt32BigEndian(span[at..], letter);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 4)..], letter);
            BinaryPrimitives.WriteInt32BigEndian(span[(at + 8)..], glyph);
            at += group;
        }

        return table;
    }

    private static Dictionary<int, ushort> ReadSegments(ReadOnlySpan<byte> map)
    {
        var glyphs = new Dictionary<int, ushort>();
        var segments = Word(map, 6) / 2;
        for (var i = 0; i < segments; i++)
        {
            var last = Word(map, 14 + (2 * i));
            var first = Word(map, 16 + (2 * segments) + (2 * i));
            var delta = Word(map, 16 + (4 * segments) + (2 * i));
            var rangeAt = 16 + (6 * segments) + (2 * i);
            var range = Word(map, rangeAt);
            for (var letter = first; letter <= last && letter != 0xFFFF; letter++)
            {
                var listed = range == 0 ? letter : Word(map, rangeAt + range + (2 * (letter - first)));
                var glyph = (ushort)(range != 0 && listed == 0 ? 0 : (listed + delta) & 0xFFFF);
                if (glyph != 0)
                    glyphs[letter] = glyph;
            }
        }

        return glyphs;
    }

    private static int Word(ReadOnlySpan<byte> table, int at) =>
        BinaryPrimitives.ReadUInt16BigEndian(table[at..]);
}
