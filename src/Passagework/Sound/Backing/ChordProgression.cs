using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>Chords bar by bar.</summary>
public sealed record ChordProgression
{
    private const int MostBars = 256;
    private const int MostLetters = 4000;

    private ChordProgression(ImmutableArray<ImmutableArray<Chord>> bars) => Bars = bars;

    /// <summary>The chords of each bar, which they share evenly; at least one bar with at least one chord.</summary>
    public ImmutableArray<ImmutableArray<Chord>> Bars { get; }

    /// <summary>
    /// Reads chords such as <c>Am7 | D7 G7 | %</c>: bars between lines, several chords of a bar between spaces, a
    /// percent sign for the bar before again.
    /// </summary>
    public static Outcome<ChordProgression> Read(string text)
    {
        var words = text.Trim().Trim('|').Split('|');
        if (text.Length > MostLetters || words.Length > MostBars)
        {
            return new Fault("too many chords", "", $"at most {MostBars} bars");
        }

        var bars = ImmutableArray.CreateBuilder<ImmutableArray<Chord>>();
        foreach (var word in words)
        {
            if (word.Trim() == "%" && bars.Count > 0)
            {
                bars.Add(bars[^1]);
                continue;
            }

            if (!Bar(word, bars.Count + 1).TryGet(out var chords, out var fault))
            {
                return fault;
            }

            bars.Add(chords);
        }

        return new ChordProgression(bars.ToImmutable());
    }

    /// <summary>Content equality.</summary>
    public bool Equals(ChordProgression? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>As it is read.</summary>
    public override string ToString() => string.Join(" | ", Bars.Select(bar => string.Join(' ', bar)));

    private static Outcome<ImmutableArray<Chord>> Bar(string text, int number)
    {
        var place = string.Create(CultureInfo.InvariantCulture, $"bar {number}");
        var chords = ImmutableArray.CreateBuilder<Chord>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!Chord.TryParse(word, out var chord))
            {
                return new Fault($"{Quote.Short(word)} is no chord", place, "a chord such as Am7, D7 or C/E");
            }

            chords.Add(chord);
        }

        return chords.Count > 0
            ? chords.ToImmutable()
            : new Fault("no chord", place, "chords with lines between the bars, such as Am7 | D7");
    }
}
