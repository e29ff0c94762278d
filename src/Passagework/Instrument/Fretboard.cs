using System.Collections.Immutable;

namespace Passagework.Instrument;

/// <summary>The instrument in the hands: tuning, frets, capo and its measures in millimetres.</summary>
/// <remarks>
/// Frets everywhere count from the capo. Lengths along the neck are measured from the nut of a straight-fretted
/// instrument; where strings differ in scale length, all strings line up at <see cref="NeutralFret"/>.
/// </remarks>
public sealed record Fretboard
{
    /// <summary>The fret that stands straight across when strings differ in scale length (assumed; makers differ).</summary>
    public const int NeutralFret = 7;

    /// <summary>A six-string guitar in standard tuning.</summary>
    public static Fretboard Standard { get; } = new();

    /// <summary>What the strings sound.</summary>
    public Tuning Tuning { get; init; } = Tuning.Standard;

    /// <summary>Number of frets, 12 to 36, counted from the nut.</summary>
    public int Frets { get; init; } = 22;

    /// <summary>Fret of the capo, 0 (none) to 12.</summary>
    public int Capo { get; init; }

    /// <summary>Scale length in mm: one for all strings, or one per string from string 1 up; empty for the usual of the tuning.</summary>
    public ImmutableArray<double> ScaleLengthsMm { get; init; } = [];

    /// <summary>Distance between neighbouring strings in mm at the nut; null for the usual of the tuning.</summary>
    public double? NutSpacingMm { get; init; }

    /// <summary>Distance between neighbouring strings in mm at the bridge; null for the usual of the tuning.</summary>
    public double? BridgeSpacingMm { get; init; }

    /// <summary>Highest fret that can be played, counted from the capo.</summary>
    public int PlayableFrets => Frets - Capo;

    /// <summary>The MIDI key that sounds at a place.</summary>
    public int MidiAt(Place place) => Tuning.Open(place.String).Midi + Capo + place.Fret;

    /// <summary>Whether the string and the fret exist.</summary>
    public bool Has(Place place) => place.String <= Tuning.StringCount && place.Fret <= PlayableFrets;

    /// <summary>All places that sound a MIDI key, from string 1 up.</summary>
    public IEnumerable<Place> PlacesOf(int midi)
    {
        for (var number = 1; number <= Tuning.StringCount; number++)
        {
            var fret = midi - Tuning.Open(number).Midi - Capo;
            if (fret >= 0 && fret <= PlayableFrets)
            {
                yield return Place.At(number, fret);
            }
        }
    }

    /// <summary>Content equality; scale lengths are compared one by one.</summary>
    public bool Equals(Fretboard? other) =>
        other is not null
        && Tuning.Equals(other.Tuning)
        && (Frets, Capo, NutSpacingMm, BridgeSpacingMm)
            == (other.Frets, other.Capo, other.NutSpacingMm, other.BridgeSpacingMm)
        && ScaleLengthsMm.SequenceEqual(other.ScaleLengthsMm);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Tuning, Frets, Capo);
}
