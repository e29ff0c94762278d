using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Engraving.Scores;

/// <summary>A text over a column.</summary>
/// <param name="Text">What is written.</param>
/// <param name="Share">How much of the column's length has passed when it begins, from 0 to below 1.</param>
internal readonly record struct PlacedText(string Text, double Share);

/// <summary>Chord symbols and words by the note or rest during which they begin.</summary>
internal sealed class ScoreTexts
{
    private readonly ImmutableArray<ScoreNote> _notes;
    private readonly Dictionary<Fraction, ImmutableArray<PlacedText>> _chords;
    private readonly Dictionary<Fraction, ImmutableArray<PlacedText>> _words;

    public ScoreTexts(ImmutableArray<ImmutableArray<ScoreNote>> bars, ScoreOptions options)
    {
        var written = !options.Chords.IsEmpty || !options.Words.IsEmpty;
        _notes = written ? [.. bars.SelectMany(bar => bar)] : [];
        _chords = Place(options.Chords.Select(chord => (chord.Onset, Symbol(chord.Chord))));
        _words = Place(options.Words.Select(words => (words.Onset, words.Text)));
    }

    public ImmutableArray<PlacedText> ChordsAt(Fraction onset) => _chords.GetValueOrDefault(onset, []);

    public ImmutableArray<PlacedText> WordsAt(Fraction onset) => _words.GetValueOrDefault(onset, []);

    /// <summary>The symbol in print: real flat and sharp signs.</summary>
    public static string Symbol(Chord chord) =>
        Name(chord.Root) + Signs(chord.Kind.Symbol) + (chord.Bass is { } bass ? "/" + Name(bass) : "");

    // A letter is never taken for a flat sign: B is a root, b a sign.
    private static string Name(NoteName name) => Signs(name.ToString());

    private static string Signs(string text) => text.Replace('b', '♭').Replace('#', '♯');

    private Dictionary<Fraction, ImmutableArray<PlacedText>> Place(
        IEnumerable<(Fraction Onset, string Text)> texts
    ) =>
        texts
            .OrderBy(text => text.Onset)
            .Select(text => (Note: Under(text.Onset), text.Onset, text.Text))
            .GroupBy(text => text.Note.Onset)
            .ToDictionary(
                group => group.Key,
                group =>
                    group
                        .Select(text => new PlacedText(
                            text.Text,
                            Math.Clamp(((text.Onset - text.Note.Onset) / text.Note.Length).ToDouble(), 0, 1)
                        ))
                        .ToImmutableArray()
            );

    private ScoreNote Under(Fraction time)
    {
        var (low, high) = (0, _notes.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = _notes[middle].Onset <= time ? (middle, high) : (low, middle - 1);
        }

        return _notes[low];
    }
}
