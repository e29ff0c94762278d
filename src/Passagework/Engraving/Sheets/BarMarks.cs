using System.Collections.Immutable;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Engraving.Sheets;

/// <summary>Whole bars of a piece, counted from 0, up to one that is left out.</summary>
internal readonly record struct BarSpan(int From, int To);

/// <summary>What is asked to be written at bars and notes of a piece of which only some bars are printed.</summary>
internal sealed class BarMarks(Line line, ScoreOptions options)
{
    private readonly Fraction _bar = line.Recipe.Rhythm.Meter.Bar;
    private readonly int _bars = BarCut.Count(line);
    private readonly int _firstNumber = FirstNumber(line, options);

    /// <summary>What is written at no note and no bar of the whole piece.</summary>
    public static Fault? Check(Line line, ScoreOptions options)
    {
        var first = FirstNumber(line, options);
        return OptionRules.CheckNotes(options, line.Notes.Length)
            ?? OptionRules.CheckBars(options, first, first + BarCut.Count(line) - 1);
    }

    /// <summary>The options with the marks of some bars, counted from the first of these.</summary>
    public ScoreOptions In(BarSpan span)
    {
        var (note, start) = (BarCut.FirstNote(line, span.From), _bar * Fraction.Of(span.From));
        return options with
        {
            Bends =
            [
                .. options
                    .Bends.Where(bend => HasNote(span, bend.Note))
                    .Select(bend => bend with { Note = bend.Note - note }),
            ],
            Vibratos = [.. options.Vibratos.Where(at => HasNote(span, at)).Select(at => at - note)],
            Chords = ChordsIn(span, start),
            Words =
            [
                .. options
                    .Words.Where(words => Has(span, words.Onset))
                    .Select(words => words with { Onset = words.Onset - start }),
            ],
            Repeats =
            [
                .. options
                    .Repeats.Where(repeat => HasBars(span, repeat.First, repeat.Last))
                    .Select(repeat => new ScoreRepeat(
                        NumberIn(span, repeat.First),
                        NumberIn(span, repeat.Last)
                    )),
            ],
            Endings =
            [
                .. options
                    .Endings.Where(ending => HasBars(span, ending.First, ending.Last))
                    .Select(ending =>
                        ending with
                        {
                            First = NumberIn(span, ending.First),
                            Last = NumberIn(span, ending.Last),
                        }
                    ),
            ],
        };
    }

    /// <summary>What stands in none of the printed stretches, in one remark; none where all is printed.</summary>
    public ImmutableArray<string> Lost(params ImmutableArray<BarSpan> printed)
    {
        var lost = new[]
        {
            (Count(options.Bends, bend => printed.Any(span => HasNote(span, bend.Note))), "bend"),
            (Count(options.Vibratos, note => printed.Any(span => HasNote(span, note))), "vibrato"),
            (Count(options.Chords, chord => printed.Any(span => Has(span, chord.Onset))), "chord symbol"),
            (Count(options.Words, words => printed.Any(span => Has(span, words.Onset))), "text"),
            (
                Count(options.Repeats, part => printed.Any(span => HasBars(span, part.First, part.Last))),
                "repeat"
            ),
            (
                Count(options.Endings, part => printed.Any(span => HasBars(span, part.First, part.Last))),
                "ending"
            ),
        };
        var words = lost.Where(kind => kind.Item1 > 0)
            .Select(kind => NumberWords.Of(kind.Item1, kind.Item2))
            .ToList();
        return words.Count == 0 ? [] : [$"left out with their bars: {string.Join(", ", words)}"];
    }

    private static int Count<T>(ImmutableArray<T> marks, Func<T, bool> isPrinted) =>
        marks.Count(mark => !isPrinted(mark));

    private static int FirstNumber(Line line, ScoreOptions options) =>
        WrittenScore.BeginsWithPickUp(line.Recipe, options) ? 0 : 1;

    // The chord that goes on sounding from before is named again.
    private ImmutableArray<ScoreChord> ChordsIn(BarSpan span, Fraction start)
    {
        var chords = options.Chords.Where(chord => Has(span, chord.Onset)).ToList();
        var before = options.Chords.Where(chord => chord.Onset <= start).MaxBy(chord => chord.Onset);
        if (span.From > 0 && before is not null && before.Onset < start)
        {
            chords.Insert(0, before with { Onset = start });
        }

        return [.. chords.Select(chord => chord with { Onset = chord.Onset - start })];
    }

    private bool HasNote(BarSpan span, int note) => Has(span, line.Notes[note].Onset);

    // What is asked for before the first bar line or after the last belongs to the bars there.
    private bool Has(BarSpan span, Fraction onset) =>
        (span.From == 0 || onset >= _bar * Fraction.Of(span.From))
        && (span.To == _bars || onset < _bar * Fraction.Of(span.To));

    private bool HasBars(BarSpan span, int first, int last) =>
        first - _firstNumber >= span.From && last - _firstNumber < span.To;

    // A later part has no pick-up: its first bar is called bar 1.
    private int NumberIn(BarSpan span, int number) =>
        span.From == 0 ? number : number - _firstNumber - span.From + 1;
}
