using Passagework.Exercises;
using Passagework.Theory;

namespace Passagework.Studio.Features.Sound;

/// <summary>A chord that goes with a scale, to play along with.</summary>
internal static class BackingSuggestion
{
    /// <summary>
    /// The chord on the root with the third, fifth and seventh of the scale (common practice); null when the line names no
    /// scale or its root cannot be a chord's.
    /// </summary>
    public static string? For(Recipe recipe)
    {
        if (recipe.Notes is not { } written)
        {
            return null;
        }

        var notes = written.Transposed(recipe.Instrument.Capo);
        var symbol = $"{notes.Root}{KindOf(notes)}";
        return Chord.TryParse(symbol, out _) ? symbol : null;
    }

    private static string KindOf(NoteSet notes)
    {
        bool Has(int semitones) => notes.Semitones.Contains(semitones);
        if (Has(4))
        {
            return Has(10) ? "7" : MajorSeventh(Has(11), "maj7");
        }

        if (!Has(3))
        {
            return "5";
        }

        if (Has(6) && !Has(7))
        {
            return Has(10) ? "m7b5" : "dim";
        }

        return Has(10) ? "m7" : $"m{MajorSeventh(Has(11), "maj7")}";
    }

    private static string MajorSeventh(bool there, string symbol) => there ? symbol : "";
}
