using Passagework.Exercises;

namespace Passagework.Choosing.Discovery;

/// <summary>Writes the line of a cell as indices on its path, as the line builder would.</summary>
internal readonly record struct CellWalker(int PathLength, int Step, Direction Direction)
{
    /// <summary>Most notes that a line of such cells can have.</summary>
    public int MostNotes(int length) => (((PathLength - 1) / Step) + 1) * length * (IsBothWays ? 2 : 1);

    /// <summary>Whether the line begins with the mirrored cell.</summary>
    public bool IsMirrored => Direction is Direction.Down or Direction.DownAndUp;

    private bool IsBothWays => Direction is Direction.UpAndDown or Direction.DownAndUp;

    /// <summary>Fills in the indices and gives their number; 0 when the cell is wider than the path.</summary>
    public int Write(ReadOnlySpan<int> offsets, Span<int> indices)
    {
        var (lowest, highest) = (0, 0);
        foreach (var offset in offsets)
        {
            lowest = Math.Min(lowest, offset);
            highest = Math.Max(highest, offset);
        }

        var (first, last) = (-lowest, PathLength - 1 - highest);
        if (first > last)
        {
            return 0;
        }

        var count = Half(offsets, (first, last), IsMirrored, indices);
        return IsBothWays ? count + Half(offsets, (first, last), !IsMirrored, indices[count..]) : count;
    }

    private int Half(ReadOnlySpan<int> offsets, (int First, int Last) starts, bool mirrored, Span<int> into)
    {
        var count = 0;
        for (var start = starts.First; start <= starts.Last; start += Step)
        {
            foreach (var offset in offsets)
            {
                into[count++] = mirrored ? PathLength - 1 - start - offset : start + offset;
            }
        }

        return count;
    }
}
