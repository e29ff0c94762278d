namespace Passagework.Choosing.Discovery;

/// <summary>Measures the line of a cell with each first stroke.</summary>
internal abstract class CellMeasurer
{
    /// <summary>One take for each first stroke of the space.</summary>
    public abstract CellTake[] Takes { get; }

    /// <summary>Fills in the takes; false when no hand can play the line.</summary>
    /// <param name="offsets">The cell, not wider than the path.</param>
    public abstract bool Measure(ReadOnlySpan<int> offsets);
}
