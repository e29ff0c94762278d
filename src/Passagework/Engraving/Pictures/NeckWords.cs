using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Engraving.Pictures;

/// <summary>Says how to read a drawn neck, and what is on it.</summary>
internal sealed class NeckWords(
    NeckFrame frame,
    NeckNotes notes,
    NeckDots dots,
    Recipe recipe,
    FretboardOptions options
)
{
    /// <summary>Sentences to be printed beside the picture.</summary>
    public string Caption()
    {
        var sentences = new[] { What(), Filled(), Way(), Turned(), Capo() };
        return string.Join(" ", sentences.Where(sentence => sentence.Length > 0));
    }

    /// <summary>One sentence for those who do not see the picture.</summary>
    public string Description()
    {
        var played = notes.Played.Take(MostListed).Select(Said).ToList();
        var more =
            notes.Played.Length > played.Count ? $" and {notes.Played.Length - played.Count} more" : "";
        var parts = new List<string>
        {
            $"Neck with {NumberWords.Of(frame.Strings, "string")}, frets {frame.Range.First} to {frame.Range.Last}",
            $"{(notes.IsOneGroup ? "the first group" : "the line")} is {string.Join(", ", played)}{more}",
        };
        if (notes.Next is { } next)
        {
            parts.Add($"the next group begins at {next.Place}");
        }

        if (!notes.Hollow.IsEmpty)
        {
            parts.Add($"not played in it: {string.Join(", ", notes.Hollow.Take(MostListed))}");
        }

        return string.Join("; ", parts) + ".";
    }

    private const int MostListed = 64;

    private static string Said(PlayedNote note) => string.Join(" with ", note.Tones.Select(Said));

    private static string Said(PlayedTone tone) =>
        tone.Finger == 0 ? $"{tone.Place} open" : $"{tone.Place} finger {tone.Finger}";

    private string What()
    {
        var name = LayoutWords.Of(recipe, options.Style);
        var positions = notes.Played.Select(note => note.Position).Distinct().ToList();
        var position = frame.Range.HasOpen ? "" : $"position {RomanNumerals.Of(positions[0])}";
        var first = string.Join(", ", new[] { name, position }.Where(part => part.Length > 0));
        return first.Length == 0 ? "" : NumberWords.Sentence(first) + ".";
    }

    private string Filled()
    {
        var who = notes.IsOneGroup ? "The first group" : "The notes played";
        var text = options.Dots switch
        {
            DotText.Order => $"{who} in order",
            DotText.Finger => $"{who}, with fingers",
            DotText.Degree => $"{who}, with degrees above the root",
            DotText.Name => $"{who}, with names",
            _ => who + " filled",
        };
        var roots = notes.Places.Any(dots.IsRoot) ? $"squares are {RootName()}" : "";
        return string.Join("; ", new[] { text, roots }.Where(part => part.Length > 0)) + ".";
    }

    // What is written as if the capo were the nut sounds higher, and is named where it sounds.
    private string RootName() => options.Style.Of(recipe.Notes!.Transposed(recipe.Instrument.Capo).Root);

    private string Way() =>
        options.Route && notes.Next is { } next && next.Place != notes.Played[^1].Place && notes.CanBeFollowed
            ? "The dashed line leads to the next group."
            : "";

    private string Turned() =>
        (options.Turn, options.LeftHanded) switch
        {
            (NeckTurn.Horizontal, false) => "Strings as in tab: string 1 on top.",
            (NeckTurn.Horizontal, true) => "Left-handed: nut at the right, string 1 on top.",
            (NeckTurn.Vertical, false) => "Nut on top, string 1 at the right.",
            _ => "Left-handed: nut on top, string 1 at the left.",
        };

    // The line is written as if the capo were the nut; what it would be without tells which shapes it has.
    private string Capo()
    {
        var capo = recipe.Instrument.Capo;
        var shapes = recipe.Notes is { } notes
            ? $"; the shapes are those of {options.Style.Of(notes.Root)}"
            : "";
        return capo > 0 ? $"Frets count from the capo at fret {capo}{shapes}." : "";
    }
}
