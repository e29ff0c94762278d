using System.Collections.Frozen;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Writes a chord symbol: root, kind, bass, and the degrees that the format's kinds lack.</summary>
internal static class HarmonyXml
{
    // Kinds of MusicXML 4.0 by our symbols; what a kind has no word for is a plainer one with degrees added.
    private static readonly FrozenDictionary<string, (string Kind, string Added)> Kinds = new Dictionary<
        string,
        (string, string)
    >
    {
        [""] = ("major", ""),
        ["m"] = ("minor", ""),
        ["dim"] = ("diminished", ""),
        ["aug"] = ("augmented", ""),
        ["5"] = ("power", ""),
        ["sus2"] = ("suspended-second", ""),
        ["sus4"] = ("suspended-fourth", ""),
        ["6"] = ("major-sixth", ""),
        ["m6"] = ("minor-sixth", ""),
        ["7"] = ("dominant", ""),
        ["maj7"] = ("major-seventh", ""),
        ["m7"] = ("minor-seventh", ""),
        ["mmaj7"] = ("major-minor", ""),
        ["m7b5"] = ("half-diminished", ""),
        ["dim7"] = ("diminished-seventh", ""),
        ["7sus4"] = ("suspended-fourth", "b7"),
        ["9"] = ("dominant-ninth", ""),
        ["maj9"] = ("major-ninth", ""),
        ["m9"] = ("minor-ninth", ""),
        ["add9"] = ("major", "9"),
        ["7b9"] = ("dominant", "b9"),
        ["7#9"] = ("dominant", "#9"),
        ["13"] = ("dominant-13th", ""),
    }.ToFrozenDictionary();

    /// <summary>Writes it before the note under which it begins.</summary>
    /// <param name="page">The page.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="offset">Divisions after the beginning of that note.</param>
    public static void Write(XmlPage page, Chord chord, long offset)
    {
        var (kind, added) = Kinds[chord.Kind.Symbol];
        page.Open("harmony");
        Note(page, "root", chord.Root);
        page.Text("kind", kind, "text", chord.Kind.Symbol);
        if (chord.Bass is { } bass)
        {
            Note(page, "bass", bass);
        }

        if (ScaleDegree.TryParse(added, out var degree) && added.Length > 0)
        {
            page.Open("degree");
            page.Number("degree-value", degree.Number);
            page.Number("degree-alter", degree.Alteration + (degree.Number == 7 ? 1 : 0));
            page.Text("degree-type", "add");
            page.Close();
        }

        if (offset > 0)
        {
            page.Number("offset", offset);
        }

        page.Close();
    }

    private static void Note(XmlPage page, string part, NoteName name)
    {
        page.Open(part);
        page.Text($"{part}-step", "CDEFGAB"[name.Letter].ToString());
        if (name.Alteration != 0)
        {
            page.Number($"{part}-alter", name.Alteration);
        }

        page.Close();
    }
}
