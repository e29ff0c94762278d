using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Sound.Takes;

/// <summary>What both hands really do in a take.</summary>
internal sealed class TakeHands
{
    private const double LoudestVelocity = 127;

    private readonly ImmutableArray<TakeNote> _notes;
    private readonly Fretboard _neck;
    private readonly TakePlan _plan;
    private readonly TakeTimes _times;
    private readonly TakeChance _chance;

    public TakeHands(
        ImmutableArray<TakeNote> notes,
        Fretboard neck,
        TakePlan plan,
        TakeSlips slips,
        TakeChance chance
    )
    {
        (_notes, _neck, _plan, _chance) = (notes, neck, plan, chance);
        _times = new TakeTimes(notes, plan, chance);
        Strokes = [.. notes.SelectMany(note => Of(note, slips)).OrderBy(stroke => stroke.Event.Seconds)];
        Strokes = [.. Strokes.Select(Rung)];
        var rakes = notes
            .Where(note => !slips.IsMissed(note))
            .SelectMany(note => note.Rake.Select(e => Moved(e, note)));
        var sounding = Strokes.Where(stroke => stroke.Sounds).Select(stroke => stroke.Event);
        Events = [.. sounding.Concat(rakes).Select(Tuned)];
    }

    /// <summary>All notes of the take, missed ones too, in order of time.</summary>
    public ImmutableArray<TakeStroke> Strokes { get; }

    /// <summary>Everything that sounds.</summary>
    public ImmutableArray<StringEvent> Events { get; }

    /// <summary>When the last string is left or, where one rings on for ever, the last note is struck.</summary>
    public double LastSeconds =>
        Strokes.Max(stroke =>
            double.IsFinite(stroke.Event.EndSeconds) ? stroke.Event.EndSeconds : stroke.Event.Seconds
        );

    /// <summary>An event in the take's tuning.</summary>
    public StringEvent Tuned(StringEvent e) => e with { Key = e.Key + (_plan.TuningCents / 100) };

    /// <summary>By how many milliseconds a note is struck late, or early below zero.</summary>
    public double DeviationMs(TakeNote note) => 1000 * (_times.Of(note) - note.Seconds);

    private IEnumerable<TakeStroke> Of(TakeNote note, TakeSlips slips)
    {
        var kind = slips.IsMissed(note) ? TruthKind.Missed : TruthKind.Played;
        var wrong = slips.WrongPlace(note);
        var extra = slips.Extra(note);
        foreach (var tone in note.Tones)
        {
            var moved = Moved(tone, note);
            var place = Place.At(tone.String, (int)tone.Key - _neck.MidiAt(Place.At(tone.String, 0)));
            var expected = (int)tone.Key;
            if (place == note.Played.Place && wrong is { } other)
            {
                moved = moved with { String = other.String, Key = _neck.MidiAt(other) };
                yield return new TakeStroke(TruthKind.Wrong, note, other, expected, moved);
            }
            else
            {
                yield return new TakeStroke(kind, note, place, expected, moved);
            }
        }

        if (extra is { } added)
        {
            yield return Extra(note, added);
        }
    }

    private TakeStroke Extra(TakeNote note, (Place Place, double Share) added)
    {
        var main = Moved(note.Tones.First(tone => tone.String == note.Played.Place.String), note);
        var (from, to) = (_times.Of(note), _times.Of(_notes[note.Number + 1]));
        var again = main with
        {
            Seconds = from + (added.Share * (to - from)),
            String = added.Place.String,
            Key = _neck.MidiAt(added.Place),
            EndSeconds = to,
            Action = main.Action is StringAction.Thumb or StringAction.Finger
                ? main.Action
                : Back(main.Action),
        };
        return new TakeStroke(TruthKind.Extra, note, added.Place, null, again);
    }

    private static StringAction Back(StringAction stroke) =>
        stroke == StringAction.Down ? StringAction.Up : StringAction.Down;

    private StringEvent Moved(StringEvent tone, TakeNote note)
    {
        var played = tone.Strength * LoudestVelocity;
        var accent = note.Played.Note.InGroup == 0 ? _plan.GroupAccent : 0;
        var spread = _plan.VelocitySpread * _chance.Normal(TakeDraw.Velocity, note.Number);
        var velocity = Math.Round((_plan.MeanVelocity ?? played) + accent + spread);
        var rake = tone.Action == StringAction.Rake;
        return tone with
        {
            Seconds = _times.At(tone.Seconds),
            EndSeconds = _times.At(tone.EndSeconds),
            Strength = rake ? tone.Strength : Math.Clamp(velocity, 1, LoudestVelocity) / LoudestVelocity,
        };
    }

    // A string left for another one may ring on; the rest keep their end.
    private TakeStroke Rung(TakeStroke stroke, int at)
    {
        var next = Strokes.Skip(at + 1).FirstOrDefault(other => other.Sounds);
        var mayRing =
            stroke.Sounds
            && next is { Kind: not TruthKind.Extra }
            && stroke.Kind != TruthKind.Extra
            && next.Note.Number == stroke.Note.Number + 1
            && next.Place.String != stroke.Place.String;
        if (!mayRing || _chance.Uniform(TakeDraw.Ring, stroke.Note.Number) >= _plan.RingingShare)
        {
            return stroke;
        }

        var span = _plan.RingMostMs - _plan.RingLeastMs;
        var ms = _plan.RingLeastMs + (span * _chance.Uniform(TakeDraw.RingLength, stroke.Note.Number));
        var end = Math.Max(stroke.Event.EndSeconds, next!.Event.Seconds + (ms / 1000));
        return stroke with { Event = stroke.Event with { EndSeconds = end } };
    }
}
