using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>
/// Root where the chord begins and where a group of beats begins, other chord tones between, a semitone beside the next
/// root before it comes (common practice of bass lines).
/// </summary>
internal sealed class BassPart
{
    private const int Lowest = 28;
    private const int Highest = 47;
    private int _last = 33;

    public IEnumerable<Hit> Beat(BandBeat beat, Division division, double chance)
    {
        var at = Fraction.Of(beat.Number);
        var leads = beat.Next != beat.Chord;
        if (division.Groove == Groove.Swung)
        {
            yield return Note(at, Fraction.One, Walked(beat, leads, chance), 0.8);
            yield break;
        }

        var late = division.Late;
        var first = beat.IsStart || beat.IsChange;
        if (first || division.Groove == Groove.Shuffle)
        {
            yield return Note(at, late, first ? Root(beat.Chord) : Inner(beat.Chord, chance), 0.9);
        }

        if (!division.HasLate)
        {
            yield break;
        }

        if (leads)
        {
            yield return Note(at + late, Fraction.One - late, Beside(beat.Next, chance), 0.7);
        }
        else if (division.Groove == Groove.Shuffle || chance < 0.6)
        {
            yield return Note(at + late, Fraction.One - late, _last, 0.7);
        }
    }

    private Hit Note(Fraction at, Fraction beats, int key, double strength)
    {
        _last = key;
        return new Hit(at, beats, BandSound.Bass, key, strength);
    }

    private int Walked(BandBeat beat, bool leads, double chance)
    {
        if (beat.IsChange)
        {
            return Root(beat.Chord);
        }

        return leads ? Beside(beat.Next, chance) : Inner(beat.Chord, chance);
    }

    private int Root(Chord chord) => Nearest((chord.Bass ?? chord.Root).PitchClass);

    // Another chord tone than the one that sounds, near it.
    private int Inner(Chord chord, double chance)
    {
        var tones = chord.Tones.Select(tone => Nearest(tone.PitchClass)).Where(key => key != _last).ToList();
        return tones.Count == 0 ? _last : tones[(int)(chance * tones.Count)];
    }

    private int Beside(Chord next, double chance)
    {
        var root = Root(next);
        return chance < 0.5 && root > Lowest ? root - 1 : root + 1;
    }

    private int Nearest(int pitchClass) =>
        Enumerable
            .Range(Lowest, Highest - Lowest)
            .Where(key => key % 12 == pitchClass)
            .MinBy(key => Math.Abs(key - _last));
}
