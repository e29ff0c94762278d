using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>The name of a degree above a root.</summary>
internal static class DegreeNames
{
    /// <summary>
    /// The degree's letter counted from the root's, with the signs that it needs. In place of a double flat stands the
    /// natural or flat neighbour name, in place of a double sharp the natural or sharp one.
    /// </summary>
    /// <param name="root">Never respelled.</param>
    /// <param name="degree">The degree.</param>
    /// <param name="raisedLeadingNote">Whether a double sharp may stand, as on the leading note of a minor key.</param>
    public static NoteName Name(NoteName root, ScaleDegree degree, bool raisedLeadingNote = false)
    {
        if (degree.Letters == 0 && degree.Alteration == 0)
        {
            return root;
        }

        var letter = (root.Letter + degree.Letters) % 7;
        var key = root.PitchClass + degree.Semitones;
        var alteration = WholeNumbers.Modulo(key - NoteName.NaturalSemitones[letter] + 6, 12) - 6;
        var mostSharps = raisedLeadingNote ? 2 : 1;
        if (alteration < -1)
        {
            return PlainNames.Falling(key);
        }

        return alteration > mostSharps ? PlainNames.Rising(key) : NoteName.Of(letter, alteration);
    }
}
