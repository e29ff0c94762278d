using System.Collections.Immutable;

namespace Passagework.Foundation;

/// <summary>The words that recipes, commands and screens use for the values of one kind.</summary>
/// <typeparam name="T">The values; each has exactly one word.</typeparam>
public sealed class WordList<T>
    where T : struct
{
    private readonly string _kind;
    private readonly ImmutableArray<(string Word, T Value)> _pairs;

    /// <summary>The words of a kind of values.</summary>
    /// <param name="kind">What the values are, for messages.</param>
    /// <param name="pairs">Each value with its word.</param>
    public WordList(string kind, params ReadOnlySpan<(string Word, T Value)> pairs)
    {
        _kind = kind;
        _pairs = [.. pairs];
        Words = [.. _pairs.Select(pair => pair.Word)];
    }

    /// <summary>All words, in the order in which they are listed for people.</summary>
    public ImmutableArray<string> Words { get; }

    /// <summary>The word for a value.</summary>
    /// <exception cref="InvalidOperationException">The value can't be written.</exception>
    public string Of(T value) =>
        _pairs.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Word;

    /// <summary>The value of a word; a fault suggests the word that was probably meant.</summary>
    public Outcome<T> Read(string word)
    {
        foreach (var pair in _pairs)
        {
            if (pair.Word == word)
            {
                return pair.Value;
            }
        }

        return new Fault($"unknown {_kind} {Quote.Short(word)}", Right: NearestWord.Hint(word, Words));
    }
}
