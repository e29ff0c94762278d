using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>How one note may be fretted: place, finger and where the hand stands.</summary>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">1 to 4, 0 for an open string.</param>
/// <param name="Position">Fret at which the first finger rests; an open string carries it over.</param>
internal readonly record struct FretState(Place Place, int Finger, int Position)
{
    /// <summary>The fingers of a chord whose highest tone this is; null for a single note.</summary>
    public FretForm? Form { get; init; }

    public bool IsOpen => Finger == 0;

    /// <summary>Frets that the hand's fingers stand off their natural places, all together.</summary>
    public int Strain => Form?.DeviationAt(Position) ?? Math.Abs(Deviation);

    /// <summary>Frets that the finger stands off its natural place; 0 for an open string.</summary>
    public int Deviation => IsOpen ? 0 : Place.Fret - Position - (Finger - 1);

    /// <summary>Whether the finger reaches out of the natural hand (else a deviation draws it in).</summary>
    public bool IsExtension => (Finger <= 2 && Deviation < 0) || (Finger >= 3 && Deviation > 0);
}
