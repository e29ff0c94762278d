using System.Collections.Immutable;

namespace Passagework.Theory;

/// <summary>Chooses degree names for a set of notes that has no name.</summary>
/// <remarks>
/// The names ascend and are those of least total strain: a plain step of the major scale costs nothing, a flat 2, a
/// sharp 3 (the root is never altered), a second flat or sharp 8 more, a letter used again 6. So letters are shared
/// only when there is no other way without double signs, and flats are preferred, as in the named formulas. The
/// costs are chosen by us. On a tie the lower letters stand first.
/// </remarks>
internal static class DegreeChoice
{
    private const int Forbidden = 1_000_000;

    /// <summary>One degree for each of the ascending semitones, which start from 0.</summary>
    public static ImmutableArray<ScaleDegree> For(ImmutableArray<int> semitones)
    {
        // strain[i][n]: least strain of notes i and up when note i is called n + 1.
        var strain = new int[semitones.Length][];
        for (var note = semitones.Length - 1; note >= 0; note--)
        {
            strain[note] = new int[7];
            for (var letter = 0; letter < 7; letter++)
            {
                strain[note][letter] =
                    Own(semitones[note], letter)
                    + (note + 1 < semitones.Length ? Best(strain[note + 1], letter).Strain : 0);
            }
        }

        var chosen = ImmutableArray.CreateBuilder<ScaleDegree>();
        var last = 0;
        for (var note = 0; note < semitones.Length; note++)
        {
            last = note == 0 ? 0 : Best(strain[note], last).Letter;
            chosen.Add(ScaleDegree.Reaching(semitones[note], last + 1));
        }

        return chosen.ToImmutable();
    }

    private static (int Strain, int Letter) Best(int[] strain, int previous)
    {
        var best = (Strain: int.MaxValue, Letter: previous);
        for (var letter = previous; letter < 7; letter++)
        {
            var total = strain[letter] + (letter == previous ? 6 : 0);
            if (total < best.Strain)
            {
                best = (total, letter);
            }
        }

        return best;
    }

    private static int Own(int semitones, int letter)
    {
        var alteration = ScaleDegree.Reaching(semitones, letter + 1).Alteration;
        if (letter == 0)
        {
            return alteration == 0 ? 0 : Forbidden;
        }

        var sign = alteration < 0 ? 2 : 3;
        return alteration == 0 ? 0 : sign + (8 * (Math.Abs(alteration) - 1));
    }
}
