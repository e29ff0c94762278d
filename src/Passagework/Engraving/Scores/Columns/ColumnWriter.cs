using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Engraving.Scores;

/// <summary>Turns the written bars of a piece into columns.</summary>
internal sealed class ColumnWriter
{
    // Diatonic steps above C0 of the middle line: B3 under a treble clef an octave lower, D2 under such a bass clef.
    private const int TrebleMiddle = (7 * 3) + 6;
    private const int BassMiddle = (7 * 2) + 1;

    private readonly ImmutableArray<ImmutableArray<ScoreNote>> _bars;
    private readonly ScoreOptions _options;
    private readonly ScoreFacts _facts;
    private readonly SignWriter _signs;
    private readonly CountRow _counts;
    private readonly Meter _meter;
    private readonly int _middle;
    private readonly ScoreTexts _texts;
    private readonly bool _pickUp;
    private readonly ImmutableArray<bool> _underOctave;

    private ColumnWriter(Realization realization, WrittenScore written, ScoreOptions options)
    {
        var recipe = realization.Line.Recipe;
        _bars = written.Bars;
        _pickUp = written.PickUp;
        _options = options;
        _meter = recipe.Rhythm.Meter;
        _facts = new ScoreFacts(realization, options);
        _signs = new SignWriter(written.Key);
        _middle = ScoreClef.IsBass(recipe.Instrument.Tuning) ? BassMiddle : TrebleMiddle;
        _counts = new CountRow(
            _bars.SelectMany(bar => bar).Select(note => note.Onset),
            _meter,
            options.Syllables
        );
        _texts = new ScoreTexts(_bars, options);
        _underOctave = OctaveLines.Of(realization.Notes, PositionOf);
    }

    /// <summary>All columns, bar after bar.</summary>
    public static ImmutableArray<ImmutableArray<Column>> Write(
        Realization realization,
        WrittenScore written,
        ScoreOptions options
    ) => new ColumnWriter(realization, written, options).Write();

    private ImmutableArray<ImmutableArray<Column>> Write()
    {
        var bars = ImmutableArray.CreateBuilder<ImmutableArray<Column>>(_bars.Length);
        for (var bar = 0; bar < _bars.Length; bar++)
        {
            var columns = ImmutableArray.CreateBuilder<Column>(_bars[bar].Length);
            for (var at = 0; at < _bars[bar].Length; at++)
            {
                columns.Add(ColumnOf(_bars[bar][at], bar, at));
            }

            bars.Add(columns.MoveToImmutable());
            _signs.NextBar();
        }

        return bars.MoveToImmutable();
    }

    private Column ColumnOf(ScoreNote written, int bar, int at)
    {
        var begins = written is { Note: not null, TiedBack: false };
        var note = written.Note?.Note.Index ?? 0;
        return new Column
        {
            Written = written,
            Heads = written.Note is { } played ? HeadsOf(played, written.TiedBack) : [],
            Bar = bar,
            Name = NameOf(written, bar, at),
            EndsBar = at == _bars[bar].Length - 1,
            Count = IsCounted(bar) ? _counts.At(written.Onset) : "",
            OnBeat = IsFelt(written),
            Stroke = begins ? _facts.Stroke(note) : Stroke.None,
            Plucks = begins ? _facts.Plucks(note) : [],
            StringNumber = begins ? _facts.StringNumber(note) : null,
            GroupLetter = begins ? _facts.GroupLetter(note) : null,
            Group = written.Note is null ? null : _facts.Group(note),
            Position = begins ? _facts.Position(note) : null,
            IsFirstPosition = begins && note == _facts.FirstPosition,
            Chords = _texts.ChordsAt(written.Onset),
            Words = _texts.WordsAt(written.Onset),
            Into = begins ? _facts.Into(note) : Slur.None,
            Accent = begins && _facts.Accent(note),
            Raked = begins ? _facts.Raked(note) : [],
            Bend = begins ? _facts.Bend(note) : null,
            UnderOctave = written.Note is not null && _underOctave[note],
            Vibrato = written.Note is not null && _facts.Vibrato(note),
        };
    }

    private ImmutableArray<Head> HeadsOf(PlayedNote played, bool tiedBack)
    {
        var underOctave = _underOctave[played.Note.Index];
        return played.With.IsEmpty
            ? [HeadOf(played.Highest, tiedBack, underOctave)]
            :
            [
                .. played
                    .Tones.Select(tone => HeadOf(tone, tiedBack, underOctave))
                    .OrderBy(head => head.Position),
            ];
    }

    private Head HeadOf(PlayedTone tone, bool tiedBack, bool underOctave)
    {
        var position = PositionOf(tone) - (underOctave ? OctaveLines.Octave : 0);
        return new Head(tone, position, _signs.Next(tone.Tone.Pitch, tiedBack));
    }

    private int PositionOf(PlayedTone tone) =>
        (7 * tone.Tone.Pitch.Octave) + tone.Tone.Pitch.Name.Letter - _middle;

    // Eighths and sixteenths without a dotted beat are felt in twos and threes, as they are beamed.
    private bool IsFelt(ScoreNote written)
    {
        var beats = written.Onset.Modulo(_meter.Bar) / _meter.Beat;
        var byTwos = _meter is { IsCompound: false, WrittenUnit: >= 8 };
        var beginsGroup =
            beats.Floor() % 2 == 0 && beats.Floor() < Math.Max(1, (2 * (_meter.BeatsPerBar / 2)) - 1);
        return beats.IsWhole && (!byTwos || beginsGroup);
    }

    private bool IsCounted(int bar) =>
        _options.Counting == CountedBars.All
        || (_options.Counting == CountedBars.First && bar <= (_pickUp ? 1 : 0));

    // A note keeps its name whatever the page; its held parts are counted by bar and place.
    private static string NameOf(ScoreNote written, int bar, int at)
    {
        var part = string.Create(CultureInfo.InvariantCulture, $"{bar + 1}-{at + 1}");
        if (written.Note is not { } played)
        {
            return "rest-" + part;
        }

        var note = string.Create(CultureInfo.InvariantCulture, $"note-{played.Note.Index}");
        return written.TiedBack ? $"{note}-held-{part}" : note;
    }
}

/// <summary>The bars of a piece as they are written.</summary>
/// <param name="Bars">Notes and rests, bar by bar.</param>
/// <param name="Key">The key signature.</param>
/// <param name="PickUp">Whether the first bar is a pick-up.</param>
internal sealed record WrittenScore(ImmutableArray<ImmutableArray<ScoreNote>> Bars, ScoreKey Key, bool PickUp)
{
    /// <summary>Splits what is played into bars; refused when a length is too fine for any note value.</summary>
    public static Outcome<WrittenScore> Of(Realization realization, ScoreOptions options)
    {
        if (!ScoreBars.Of(realization).TryGet(out var bars, out var fault))
        {
            return fault;
        }

        if (bars.SelectMany(bar => bar).FirstOrDefault(IsTooLong) is { } note)
        {
            var bar = (note.Onset / realization.Line.Recipe.Rhythm.Meter.Bar).Floor() + 1;
            return new Fault(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a note value of {note.Value.Length} whole notes"
                ),
                string.Create(CultureInfo.InvariantCulture, $"bar {bar}"),
                "at most two whole notes in one head, so a metre with shorter bars"
            );
        }

        var recipe = realization.Line.Recipe;
        var pickUp = BeginsWithPickUp(recipe, options);
        if (pickUp)
        {
            var offset = recipe.Rhythm.StartOffset;
            bars = bars.SetItem(0, [.. bars[0].Where(note => note.Onset >= offset)]);
        }

        return new WrittenScore(bars, ScoreKey.Of(recipe.Notes?.Transposed(recipe.Instrument.Capo)), pickUp);
    }

    /// <summary>Whether the first bar is written as a pick-up: it begins in its second half.</summary>
    public static bool BeginsWithPickUp(Recipe recipe, ScoreOptions options)
    {
        var start = recipe.Rhythm.StartOffset.Modulo(recipe.Rhythm.Meter.Bar);
        return options.PickUp && start * Fraction.Of(2) >= recipe.Rhythm.Meter.Bar;
    }

    private static bool IsTooLong(ScoreNote note) =>
        !note.WholeBar && note.Value.Halvings < HeadGlyphs.LongestHalvings;

    /// <summary>The number that a bar is called by.</summary>
    public int NumberOf(int bar) => PickUp ? bar : bar + 1;
}
