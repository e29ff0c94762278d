using System.Numerics;

namespace Passagework.Repertoire;

/// <summary>How many sets a cover needs at least.</summary>
internal static class CoverBound
{
    private const double Rounding = 1e-9;

    /// <summary>The larger of two prices: one that starts from nothing and one that starts from equal parts of each set.</summary>
    public static int Of(UInt128 open, ulong free, UInt128[] sets, ulong[] holders)
    {
        var elements = SetCover
            .Bits(open)
            .OrderBy(element => BitOperations.PopCount(holders[element] & free))
            .ToArray();
        Span<double> left = stackalloc double[SetCover.MostSets];
        left.Fill(1);
        var fromNothing = Raise(elements, free, holders, left);
        left.Fill(1);
        var fromParts = 0.0;
        foreach (var element in elements)
        {
            fromParts += Part(open, holders[element] & free, sets, left);
        }

        fromParts += Raise(elements, free, holders, left);
        return (int)Math.Ceiling(Math.Max(fromNothing, fromParts) - Rounding);
    }

    // Equal parts of the largest set that holds the element.
    private static double Part(UInt128 open, ulong holding, UInt128[] sets, Span<double> left)
    {
        var largest = 1;
        for (var rest = holding; rest != 0; rest &= rest - 1)
        {
            largest = Math.Max(largest, SetCover.Size(sets[BitOperations.TrailingZeroCount(rest)] & open));
        }

        Pay(holding, 1.0 / largest, left);
        return 1.0 / largest;
    }

    // Every price as high as the sets that hold its element allow.
    private static double Raise(int[] elements, ulong free, ulong[] holders, Span<double> left)
    {
        var sum = 0.0;
        foreach (var element in elements)
        {
            var price = double.MaxValue;
            for (var rest = holders[element] & free; rest != 0; rest &= rest - 1)
            {
                price = Math.Min(price, left[BitOperations.TrailingZeroCount(rest)]);
            }

            sum += price;
            Pay(holders[element] & free, price, left);
        }

        return sum;
    }

    private static void Pay(ulong holding, double price, Span<double> left)
    {
        for (; holding != 0; holding &= holding - 1)
        {
            left[BitOperations.TrailingZeroCount(holding)] -= price;
        }
    }
}
