using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Passagework.Engraving.Setting;

/// <summary>What lies between two spaces: runs that stay together.</summary>
internal sealed record TextWord(ImmutableArray<TextRun> Runs)
{
    public double WidthMm(TextStyle style) => Runs.Sum(run => run.WidthMm(style));

    /// <summary>The words of phrases in order; phrases that meet without white space share a word.</summary>
    public static List<TextWord> Of(IEnumerable<Phrase> phrases, TextStyle style)
    {
        var words = new List<TextWord>();
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        foreach (var phrase in phrases)
        {
            var face = phrase.Strong ? style.Strong : style.Face;
            foreach (var character in phrase.Text.EnumerateRunes())
            {
                if (!Rune.IsWhiteSpace(character))
                {
                    var sign = Accidentals.SignOf(character);
                    TextRun.Append(runs, new TextRun(sign == 0 ? character.ToString() : "", sign, face));
                }
                else if (runs.Count > 0)
                {
                    words.Add(new TextWord(runs.DrainToImmutable()));
                }
            }
        }

        if (runs.Count > 0)
        {
            words.Add(new TextWord(runs.DrainToImmutable()));
        }

        return words;
    }

    /// <summary>The word in pieces none of which is wider than a line, cut between letters as they are read.</summary>
    public IEnumerable<TextWord> CutTo(double widthMm, TextStyle style)
    {
        var letters = Runs.SelectMany(Letters).ToList();
        var piece = ImmutableArray.CreateBuilder<TextRun>();
        var width = 0.0;
        foreach (var letter in letters)
        {
            var more = letter.WidthMm(style);
            if (piece.Count > 0 && width + more > widthMm)
            {
                yield return new TextWord(Joined(piece.DrainToImmutable()));
                width = 0;
            }

            piece.Add(letter);
            width += more;
        }

        yield return new TextWord(Joined(piece.DrainToImmutable()));
    }

    /// <summary>The word without its last letter or sign; without runs when it had only one.</summary>
    public TextWord WithoutLastLetter() => new(Joined([.. Runs.SelectMany(Letters).SkipLast(1)]));

    private static IEnumerable<TextRun> Letters(TextRun run)
    {
        if (run.Sign != 0)
        {
            yield return run;
            yield break;
        }

        var letters = StringInfo.GetTextElementEnumerator(run.Text);
        while (letters.MoveNext())
        {
            yield return run with
            {
                Text = letters.GetTextElement(),
            };
        }
    }

    private static ImmutableArray<TextRun> Joined(ImmutableArray<TextRun> letters)
    {
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        foreach (var letter in letters)
        {
            TextRun.Append(runs, letter);
        }

        return runs.ToImmutable();
    }
}
