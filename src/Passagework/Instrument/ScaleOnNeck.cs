using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Instrument;

/// <summary>A string and a fret on a neck without ends: frets may be below the nut or beyond the last.</summary>
internal readonly record struct Spot(int String, int Fret);

/// <summary>A note set read on the strings of an instrument, as if the capo were the nut.</summary>
/// <remarks>Keys here are MIDI keys without the capo; they order the notes and find octaves.</remarks>
internal sealed class ScaleOnNeck(NoteSet notes, Fretboard fretboard)
{
    /// <summary>A box is anchored on string 6, or on the last string where there are fewer.</summary>
    public int AnchorString => Math.Min(Strings, 6);

    public int Strings => fretboard.Tuning.StringCount;

    public int Frets => fretboard.PlayableFrets;

    public int NoteCount => notes.Semitones.Length;

    public string Name => $"{notes.Root} {notes.Scale ?? "with these notes"}";

    public string NeckEnd =>
        fretboard.Capo == 0
            ? $"the neck ends at fret {Frets}"
            : $"with the capo at {fretboard.Capo} the neck ends at fret {Frets}";

    public int Capo => fretboard.Capo;

    public int Open(int stringNumber) => fretboard.Tuning.Open(stringNumber).Midi;

    public int Key(Spot spot) => Open(spot.String) + spot.Fret;

    public bool Contains(int key) => notes.Contains(key);

    /// <summary>Pitch class of the k-th note of the set, counted from 1.</summary>
    public int PitchClassOf(int number) =>
        WholeNumbers.Modulo(notes.Root.PitchClass + notes.Semitones[number - 1], 12);

    /// <summary>The next key of the set above (direction 1) or below (−1).</summary>
    public int Neighbour(int key, int direction)
    {
        do
        {
            key += direction;
        } while (!Contains(key));

        return key;
    }

    /// <summary>The notes of the set on one string between two frets, both included.</summary>
    public IEnumerable<Spot> Between(int stringNumber, int first, int last)
    {
        for (var fret = first; fret <= last; fret++)
        {
            if (Contains(Open(stringNumber) + fret))
            {
                yield return new Spot(stringNumber, fret);
            }
        }
    }
}
