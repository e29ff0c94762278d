namespace Passagework.Choosing.Discovery;

/// <summary>Why candidates were left out.</summary>
public enum Removal
{
    /// <summary>The cell is wider than the notes of its layout.</summary>
    TooWide,

    /// <summary>What is played is what an earlier candidate plays.</summary>
    Double,

    /// <summary>No hand can play it.</summary>
    Unplayable,

    /// <summary>A finger rolls over neighbouring strings.</summary>
    Rolls,

    /// <summary>The hand spans more frets than allowed.</summary>
    Stretch,

    /// <summary>The top tempo is too low.</summary>
    Ceiling,
}
