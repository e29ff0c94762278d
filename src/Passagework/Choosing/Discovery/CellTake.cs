namespace Passagework.Choosing.Discovery;

/// <summary>One candidate with one first stroke, measured; without allocation, NaN for what is missing.</summary>
internal record struct CellTake
{
    /// <summary>Measures that differ from cell to cell; the rhythm measures hang on length and accents alone.</summary>
    public const int Measures = 4;

    /// <summary>Balance times evenness over the fingers.</summary>
    public double EvenLoad;

    /// <summary>General use.</summary>
    public double GeneralUse;

    /// <summary>Staying power.</summary>
    public double StayingPower;

    /// <summary>Use in music.</summary>
    public double UseInMusic;

    /// <summary>Least ceiling at the student's level, notes a second.</summary>
    public double LeastCeiling;

    /// <summary>Rolls of one finger over neighbouring strings.</summary>
    public int Rolls;

    /// <summary>Most frets between two fingers while the hand stays in one position.</summary>
    public int Stretch;

    /// <summary>The measure of a criterion by its place in <see cref="RawMeasures.Criteria"/>; the first four only.</summary>
    public readonly double Of(int criterion) =>
        criterion switch
        {
            0 => EvenLoad,
            1 => GeneralUse,
            2 => StayingPower,
            _ => UseInMusic,
        };
}
