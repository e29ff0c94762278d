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

    /// <summary>Index of the first note where a figure first stands in a line; −1 where it does not.</summary>
    public static int FirstIn(Line line, CellShape shape)
    {
        var melody = new Melody(line);
        return Enumerable
            .Range(0, melody.Count)
            .Where(start => melody.Holds(start, shape.Notes) && melody.Shape(start, shape.Notes) == shape)
            .DefaultIfEmpty(-1)
            .First();
    }
}
