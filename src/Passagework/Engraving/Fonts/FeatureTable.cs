using System.Buffers.Binary;

namespace Passagework.Engraving.Fonts;

/// <summary>What the font's tables <c>GSUB</c> and <c>GPOS</c> have in common (OpenType specification, "Common table formats").</summary>
internal static class FeatureTable
{
    /// <summary>Where the subtables of the features' lookups of one kind begin, in the order in which they apply.</summary>
    /// <param name="table">The whole table; may be empty.</param>
    /// <param name="features">Tags, whatever script they are for.</param>
    /// <param name="kind">Lookup type that is wanted.</param>
    /// <param name="extension">Lookup type that only points further.</param>
    public static List<int> Subtables(
        ReadOnlySpan<byte> table,
        IReadOnlyList<string> features,
        int kind,
        int extension
    )
    {
        var found = new List<int>();
        if (table.IsEmpty)
        {
            return found;
        }

        var lookups = Word(table, 8);
        foreach (var index in Lookups(table, features))
        {
            var lookup = lookups + Word(table, lookups + 2 + (2 * index));
            for (var i = 0; i < Word(table, lookup + 4); i++)
            {
                var subtable = lookup + Word(table, lookup + 6 + (2 * i));
                var type = Word(table, lookup);
                if (type == extension)
                {
                    type = Word(table, subtable + 2);
                    subtable += BinaryPrimitives.ReadInt32BigEndian(table[(subtable + 4)..]);
                }

                if (type == kind)
                    found.Add(subtable);
            }
        }

        return found;
    }

    /// <summary>The glyphs of a coverage table in order.</summary>
    public static List<ushort> Covered(ReadOnlySpan<byte> table, int at)
    {
        var glyphs = new List<ushort>();
        var count = Word(table, at + 2);
        for (var i = 0; i < count; i++)
        {
            if (Word(table, at) == 1)
            {
                glyphs.Add((ushort)Word(table, at + 4 + (2 * i)));
                continue;
            }

            for (var glyph = Word(table, at + 4 + (6 * i)); glyph <= Word(table, at + 6 + (6 * i)); glyph++)
                glyphs.Add((ushort)glyph);
        }

        return glyphs;
    }

    public static int Word(ReadOnlySpan<byte> table, int at) =>
        BinaryPrimitives.ReadUInt16BigEndian(table[at..]);

    private static SortedSet<int> Lookups(ReadOnlySpan<byte> table, IReadOnlyList<string> features)
    {
        var indices = new SortedSet<int>();
        var list = Word(table, 6);
        for (var i = 0; i < Word(table, list); i++)
        {
            var entry = list + 2 + (6 * i);
            if (!features.Contains(System.Text.Encoding.ASCII.GetString(table.Slice(entry, 4))))
                continue;

            var feature = list + Word(table, entry + 4);
            for (var k = 0; k < Word(table, feature + 2); k++)
                indices.Add(Word(table, feature + 4 + (2 * k)));
        }

        return indices;
    }
}
