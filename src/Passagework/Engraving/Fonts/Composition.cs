using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace Passagework.Engraving.Fonts;

/// <summary>
/// Joins a letter and the sign after it into the one letter that a font has for both. The framework's own normalizing is
/// no help: without language data, as this program runs, it leaves such letters as they are.
/// </summary>
internal static class Composition
{
    private static readonly Lazy<FrozenDictionary<(int Letter, int Sign), Rune>> Pairs = new(Read);

    /// <summary>The text's letters, joined from left to right as far as possible; a broken half of a pair becomes U+FFFD.</summary>
    public static List<Rune> Compose(string text)
    {
        var letters = new List<Rune>(text.Length);
        foreach (var letter in text.EnumerateRunes())
        {
            if (
                IsSign(letter)
                && letters.Count > 0
                && Pairs.Value.TryGetValue((letters[^1].Value, letter.Value), out var joined)
            )
            {
                letters[^1] = joined;
            }
            else
            {
                letters.Add(letter);
            }
        }

        return letters;
    }

    private static bool IsSign(Rune letter) =>
        letter.Value >= 0x300 && Rune.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark;

    private static FrozenDictionary<(int Letter, int Sign), Rune> Read() =>
        Encoding
            .ASCII.GetString(FontResource.Read("compositions.txt"))
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => line[0] != '#')
            .Select(line => Array.ConvertAll(line.Split(' '), Code))
            .ToFrozenDictionary(codes => (codes[1], codes[2]), codes => new Rune(codes[0]));

    private static int Code(string hex) =>
        int.Parse(hex, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
