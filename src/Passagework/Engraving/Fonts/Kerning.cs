using static Passagework.Engraving.Fonts.FeatureTable;

namespace Passagework.Engraving.Fonts;

/// <summary>
/// How much closer or wider than usual two glyphs stand side by side: feature <c>kern</c> of the table <c>GPOS</c>
/// (OpenType specification, pair adjustment).
/// </summary>
internal sealed class Kerning
{
    private const int PairAdjustment = 2;
    private const int Extension = 9;
    private const int XPlacement = 1;
    private const int YPlacement = 2;
    private const int XAdvance = 4;

    private readonly byte[] _table;
    private readonly List<(int At, Dictionary<ushort, int> Firsts)> _subtables = [];

    public Kerning(ReadOnlySpan<byte> positions)
    {
        _table = positions.ToArray();
        foreach (var at in Subtables(positions, ["kern"], PairAdjustment, Extension))
        {
            var covered = Covered(positions, at + Word(positions, at + 2));
            _subtables.Add((at, covered.Select((glyph, i) => (glyph, i)).ToDictionary()));
        }
    }

    /// <summary>What to add to the first glyph's width, in font units; the first subtable that knows the pair decides.</summary>
    public int Between(ushort first, ushort second)
    {
        foreach (var (at, firsts) in _subtables)
        {
            if (!firsts.TryGetValue(first, out var index))
                continue;

            var found = Word(_table, at) == 1 ? InPairs(at, index, second) : InClasses(at, first, second);
            if (found is { } units)
                return units;
        }

        return 0;
    }

    private int? InPairs(int at, int index, ushort second)
    {
        var set = at + Word(_table, at + 10 + (2 * index));
        var size = 2 + ValueSize(Word(_table, at + 4)) + ValueSize(Word(_table, at + 6));
        for (var i = 0; i < Word(_table, set); i++)
        {
            var pair = set + 2 + (size * i);
            if (Word(_table, pair) == second)
                return AdvanceIn(pair + 2, Word(_table, at + 4));
        }

        return null;
    }

    private int? InClasses(int at, ushort first, ushort second)
    {
        var row = ClassOf(at + Word(_table, at + 8), first);
        var column = ClassOf(at + Word(_table, at + 10), second);
        var size = ValueSize(Word(_table, at + 4)) + ValueSize(Word(_table, at + 6));
        var cell = at + 16 + (size * ((row * Word(_table, at + 14)) + column));
        return AdvanceIn(cell, Word(_table, at + 4));
    }

    private int ClassOf(int at, ushort glyph)
    {
        if (Word(_table, at) == 1)
        {
            var index = glyph - Word(_table, at + 2);
            return index >= 0 && index < Word(_table, at + 4) ? Word(_table, at + 6 + (2 * index)) : 0;
        }

        for (var i = 0; i < Word(_table, at + 2); i++)
        {
            var range = at + 4 + (6 * i);
            if (glyph >= Word(_table, range) && glyph <= Word(_table, range + 2))
                return Word(_table, range + 4);
        }

        return 0;
    }

    private int AdvanceIn(int value, int format)
    {
        if ((format & XAdvance) == 0)
        {
            return 0;
        }

        return unchecked((short)Word(_table, value + ValueSize(format & (XPlacement | YPlacement))));
    }

    private static int ValueSize(int format) => 2 * int.PopCount(format);
}
