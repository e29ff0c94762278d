using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>How tab is read where the text leaves it open.</summary>
public sealed record TabReading
{
    /// <summary>Whether only the top string of notes that begin together is read; else chords are kept as far as one hand holds them.</summary>
    public bool TopNotesOnly { get; init; }

    /// <summary>Length of every note where no rhythm is written, as a fraction of a whole note.</summary>
    public Fraction UnwrittenLength { get; init; } = Fraction.Of(1, 8);

    /// <summary>What <c>^</c> and <c>v</c> mean in a row of strokes.</summary>
    public CaretStrokes Carets { get; init; } = CaretStrokes.Unknown;
}

/// <summary>What <c>^</c> means in a row of strokes, <c>v</c> being the other; usage differs.</summary>
public enum CaretStrokes
{
    /// <summary>Not known: such a row is left out with a warning.</summary>
    Unknown,

    /// <summary>An up-stroke.</summary>
    CaretIsUp,

    /// <summary>A down-stroke.</summary>
    CaretIsDown,
}
