using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Sheets;

/// <summary>What a student listens for: two things at most, the rarer first.</summary>
internal static class ListenWords
{
    private const int Most = 2;

    public static string Of(Measurement measurement)
    {
        var points = Points(measurement).Take(Most).Select(NumberWords.Sentence);
        return string.Join(" ", points);
    }

    private static IEnumerable<string> Points(Measurement measured)
    {
        var recipe = measured.Realization.Line.Recipe;
        var isLetRing = recipe.Cell?.Sound == NoteSound.LetRing;
        if (recipe.Cell is { Offsets.Length: > 1, Accents: [0] })
        {
            yield return "the first of each group a little louder, and no gap before it.";
        }

        if (isLetRing)
        {
            yield return "every note rings on, all equally loud.";
        }

        if (measured.Picking.Slurs > 0)
        {
            yield return "slurred notes as loud and as even as struck ones.";
        }

        if (measured.Picking.LongestSweep > 0 && !isLetRing)
        {
            yield return "in a sweep each note stops before the next.";
        }

        if (measured.Fretting.Shifts > 0)
        {
            yield return "no gap and no slide where the hand moves along the neck.";
        }

        if (measured.Picking.Skips > 0 && !isLetRing)
        {
            yield return "a string that is passed over must not sound.";
        }

        if (measured.Fretting.Rolls > 0 && !isLetRing)
        {
            yield return "where one finger serves two strings, only one of them sounds.";
        }

        yield return "every note as long and as loud as the one before.";
        yield return "no other string sounds.";
    }
}
