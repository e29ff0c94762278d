using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>The figures of three to six neighbouring notes that a line is made of.</summary>
public static class Cells
{
    /// <summary>Notes of the shortest figures that are counted.</summary>
    public const int Fewest = 3;

    /// <summary>Notes of the longest figures that are counted.</summary>
    public const int Most = 6;

    /// <summary>How often each figure occurs in a line, overlapping ones included; empty where no three notes follow one another.</summary>
    public static Distribution<CellShape> In(Line line)
    {
        var melody = new Melody(line);
        return Distribution<CellShape>.Of(
            Enumerable.Range(Fewest, Most - Fewest + 1).SelectMany(melody.Shapes)
        );
    }
}
