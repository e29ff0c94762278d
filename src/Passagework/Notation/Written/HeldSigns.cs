using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>The accidentals of one bar: a sign holds to the bar line, in its own octave only.</summary>
internal sealed class HeldSigns(ScoreKey key)
{
    private readonly Dictionary<(int Letter, int Octave), int> _held = [];

    /// <summary>Whether the next note needs a sign; a note tied to the one before needs none and is not asked about.</summary>
    public bool Sign(SpelledPitch pitch)
    {
        var alteration = pitch.Name.Alteration;
        if (At(pitch) == alteration)
        {
            return false;
        }

        _held[(pitch.Name.Letter, pitch.Octave)] = alteration;
        return true;
    }

    /// <summary>How far a note of that letter and octave is altered when it has no sign.</summary>
    public int At(SpelledPitch pitch) =>
        _held.TryGetValue((pitch.Name.Letter, pitch.Octave), out var sign)
            ? sign
            : key.AlterationOf(pitch.Name.Letter);
}
