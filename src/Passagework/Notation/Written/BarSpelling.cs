using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Writes the time of one bar in note values, ties and tuplets.</summary>
internal sealed class BarSpelling
{
    private const int MostDots = 1;
    private readonly TabBar _bar;
    private readonly Meter _meter;
    private readonly Fraction _start;
    private readonly ImmutableArray<ScoreNote>.Builder _notes = ImmutableArray.CreateBuilder<ScoreNote>();

    private BarSpelling(TabBar bar, Meter meter)
    {
        _bar = bar;
        _meter = meter;
        _start = bar.Events[0].Onset;
    }

    /// <summary>The written notes of a full bar; refused when a length is too fine for any note value.</summary>
    public static Outcome<ImmutableArray<ScoreNote>> Spell(TabBar bar, Meter meter) =>
        new BarSpelling(bar, meter).Spell();

    private Outcome<ImmutableArray<ScoreNote>> Spell()
    {
        if (_bar.Events is [{ Note: null } empty])
        {
            return ImmutableArray.Create(
                new ScoreNote
                {
                    Onset = empty.Onset,
                    Length = empty.Length,
                    Value = default,
                    WholeBar = true,
                }
            );
        }

        var cuts = _bar.Events.Select(part => part.Onset - _start);
        if (new ScoreSpans(cuts, _meter).All() is not { } spans)
        {
            return TooFine(_bar.Events.MaxBy(part => part.Length.Denominator) ?? _bar.Events[0]);
        }

        foreach (var part in _bar.Events)
        {
            if (!TryWrite(part, spans))
            {
                return TooFine(part);
            }
        }

        return _notes.ToImmutable();
    }

    private bool TryWrite(TabEvent part, ImmutableArray<ScoreSpan> spans)
    {
        var time = part.Onset - _start;
        var end = part.End - _start;
        while (time < end)
        {
            var span = SpanAt(spans, time);
            var pieceEnd = span.End < end ? span.End : end;
            if (ValueAt(span, time, pieceEnd) is not { } value)
            {
                return false;
            }

            Add(part, span, time, value);
            time += value.Length / span.Ratio;
        }

        return true;
    }

    // Plain beats next to each other are one span, so that notes may cross from one into the next.
    private static ScoreSpan SpanAt(ImmutableArray<ScoreSpan> spans, Fraction time)
    {
        var at = 0;
        while (spans[at].End <= time)
        {
            at++;
        }

        var span = spans[at];
        while (span.IsPlain && at + 1 < spans.Length && spans[at + 1].IsPlain)
        {
            at++;
            span = span with { End = spans[at].End };
        }

        return span;
    }

    private NoteValue? ValueAt(ScoreSpan span, Fraction time, Fraction end)
    {
        var written = (end - time) * span.Ratio;
        foreach (var value in NoteValue.UpTo(written, MostDots))
        {
            if (!span.IsPlain || Reads(time, time + value.Length))
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>
    /// Whether a plain note shows the beat: off the beat it stays inside, a dotted beat it fills or keeps to, and it hides
    /// the middle of four beats only from the first.
    /// </summary>
    private bool Reads(Fraction time, Fraction end)
    {
        var beats = time / _meter.Beat;
        var nextBeat = _meter.Beat * Fraction.Of(beats.Floor() + 1);
        if (end <= nextBeat)
        {
            return true;
        }

        var middle = _meter.Bar / Fraction.Of(2);
        var hidesMiddle = _meter.BeatsPerBar == 4 && time > Fraction.Zero && time < middle && end > middle;
        var fits = !_meter.IsCompound || (end / _meter.Beat).IsWhole;
        return beats.IsWhole && fits && !hidesMiddle;
    }

    private void Add(TabEvent part, ScoreSpan span, Fraction time, NoteValue value)
    {
        var onset = _start + time;
        var length = value.Length / span.Ratio;
        var sounds = part.Note?.Note;
        _notes.Add(
            new ScoreNote
            {
                Note = part.Note,
                Onset = onset,
                Length = length,
                Value = value,
                Tuplet = span.IsPlain ? null : span,
                TiedBack = sounds is not null && onset > sounds.Onset,
                TiedOn = sounds is not null && onset + length < sounds.End,
                BeamGroup = span.IsPlain ? BeamGroupAt(time) : span.Start,
                BeamPart = span.IsPlain ? BeamPartAt(time) : null,
            }
        );
    }

    // By the felt beat; eighths and sixteenths without a dotted beat go by twos, the last three together.
    private Fraction BeamGroupAt(Fraction time)
    {
        var beat = (time / _meter.Beat).Floor();
        var byTwos = _meter is { IsCompound: false, WrittenUnit: >= 8 };
        var group = byTwos ? 2 * Math.Min(beat / 2, Math.Max(0, (_meter.BeatsPerBar / 2) - 1)) : beat;
        return _meter.Beat * Fraction.Of(group);
    }

    private BeamPart BeamPartAt(Fraction time)
    {
        var part = _meter.Beat / Fraction.Of(_meter.IsCompound ? 3 : 2);
        return new BeamPart(_start + (part * Fraction.Of((time / part).Floor())), _meter.IsCompound);
    }

    private Fault TooFine(TabEvent part)
    {
        var bar = (_start / _meter.Bar).Floor() + 1;
        var what = part.Note is { } played ? $"note {played.Note.Index}" : "a rest";
        return new Fault(
            string.Create(CultureInfo.InvariantCulture, $"{what} cannot be written in note values"),
            string.Create(
                CultureInfo.InvariantCulture,
                $"bar {bar}, beat {((part.Onset - _start) / _meter.Beat) + Fraction.One}"
            ),
            "lengths that are parts of a beat, down to the 1024th note"
        );
    }
}
