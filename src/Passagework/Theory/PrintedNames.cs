using System.Collections.Frozen;
using System.Globalization;

namespace Passagework.Theory;

/// <summary>Note names as a room says them, written and read.</summary>
internal static class PrintedNames
{
    private static readonly string[] Syllables = ["Do", "Re", "Mi", "Fa", "Sol", "La", "Si"];
    private const int LetterA = 5;
    private const int LetterB = 6;
    private const int LetterE = 2;

    private static readonly FrozenDictionary<NoteNaming, FrozenDictionary<string, NoteName>> Names =
        Enum.GetValues<NoteNaming>()
            .ToFrozenDictionary(
                naming => naming,
                naming =>
                    Every()
                        .ToFrozenDictionary(
                            name => Of(name, naming),
                            name => name,
                            StringComparer.OrdinalIgnoreCase
                        )
            );

    /// <summary>Such as <c>B♭</c>, <c>B</c> or <c>Si♭</c>.</summary>
    public static string Of(NoteName name, NoteNaming naming) =>
        naming switch
        {
            NoteNaming.LettersWithH => WithH(name),
            NoteNaming.Syllables => Syllables[name.Letter] + PrintedSigns.Of(name.ToString()[1..]),
            _ => PrintedSigns.Of(name.ToString()),
        };

    /// <summary>The same with its octave.</summary>
    public static string Of(SpelledPitch pitch, NoteNaming naming) =>
        Of(pitch.Name, naming) + pitch.Octave.ToString(CultureInfo.InvariantCulture);

    /// <summary>Reads a name as the room says it, with printed or typed signs.</summary>
    public static bool TryRead(string text, NoteNaming naming, out NoteName name)
    {
        var typed = text.Trim();
        return Names[naming].TryGetValue(typed, out name)
            || Names[naming].TryGetValue(Printed(typed), out name)
            || (typed.Length > 1 && NoteName.TryParse(typed, out name));
    }

    // The first letter names the note, so that a later b is a sign.
    private static string Printed(string typed) =>
        typed.Length < 2 ? typed : typed[..1] + PrintedSigns.Of(typed[1..]);

    private static IEnumerable<NoteName> Every() =>
        from letter in Enumerable.Range(0, 7)
        from alteration in Enumerable.Range(-3, 7)
        select NoteName.Of(letter, alteration);

    private static string WithH(NoteName name)
    {
        var letter = name.Letter == LetterB ? "H" : NoteName.Of(name.Letter, 0).ToString();
        return (name.Letter, name.Alteration) switch
        {
            (LetterB, -1) => "B",
            (LetterA, -2) => "Asas",
            (LetterA or LetterE, < 0) => $"{letter}s{Times("es", -1 - name.Alteration)}",
            (_, < 0) => letter + Times("es", -name.Alteration),
            _ => letter + Times("is", name.Alteration),
        };
    }

    private static string Times(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
