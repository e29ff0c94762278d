namespace Passagework.Choosing.Discovery;

/// <summary>Numbers of candidates in visiting order: variant by variant, cell by cell, first stroke by first stroke.</summary>
/// <remarks>Cells are ordered by their steps, the first step first, from the widest step down to the widest step up.</remarks>
internal readonly record struct CellNumbers(long Cells, int Firsts, int Length, int Reach)
{
    /// <summary>For a space.</summary>
    public static CellNumbers Of(CellSpace space) =>
        new(space.Cells, space.StrokesTold.Length, space.Length, space.Reach);

    /// <summary>The number of the first candidate of a cell.</summary>
    public long Of(int variant, ReadOnlySpan<int> offsets)
    {
        var cell = 0L;
        for (var i = 1; i < offsets.Length; i++)
        {
            cell = (cell * ((2 * Reach) + 1)) + offsets[i] - offsets[i - 1] + Reach;
        }

        return ((variant * Cells) + cell) * Firsts;
    }

    /// <summary>Variant, first stroke and cell of a candidate.</summary>
    public (int Variant, int First, int[] Offsets) Read(long number)
    {
        var first = (int)(number % Firsts);
        var (variant, cell) = Math.DivRem(number / Firsts, Cells);
        var steps = new int[Length];
        for (var i = Length - 1; i > 0; i--)
        {
            steps[i] = (int)(cell % ((2 * Reach) + 1)) - Reach;
            cell /= (2 * Reach) + 1;
        }

        for (var i = 1; i < Length; i++)
        {
            steps[i] += steps[i - 1];
        }

        return ((int)variant, first, steps);
    }
}
