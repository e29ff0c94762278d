using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Sound.Takes;

/// <summary>Which notes are missed, wrong or followed by a stroke too many; one slip a note, in this order.</summary>
internal sealed class TakeSlips
{
    /// <summary>A stroke too many needs so much time before the next note.</summary>
    private const double LeastRoom = 0.105;

    private readonly ImmutableArray<TakeNote> _notes;
    private readonly Fretboard _neck;
    private readonly TakePlan _plan;
    private readonly TakeChance _chance;

    private TakeSlips(ImmutableArray<TakeNote> notes, Fretboard neck, TakePlan plan, TakeChance chance)
    {
        (_notes, _neck, _plan, _chance) = (notes, neck, plan, chance);
    }

    /// <summary>The slips of a plan; refused where a note that it names does not exist or has no room for its slip.</summary>
    public static Outcome<TakeSlips> Of(
        ImmutableArray<TakeNote> notes,
        Fretboard neck,
        TakePlan plan,
        TakeChance chance
    )
    {
        var slips = new TakeSlips(notes, neck, plan, chance);
        if (TakePlanRules.CheckNotes(plan, notes.Length) is { } fault)
        {
            return fault;
        }

        foreach (var number in plan.ExtraNotes.Where(number => !slips.HasRoom(notes[number])))
        {
            return new Fault(
                string.Create(CultureInfo.InvariantCulture, $"no room for a stroke after note {number}"),
                "extraNotes",
                "notes with 105 ms to the next one and no slur to it"
            );
        }

        return slips;
    }

    /// <summary>Whether a note is left out.</summary>
    public bool IsMissed(TakeNote note) =>
        _plan.MissedNotes.Contains(note.Number) || Falls(TakeDraw.Missed, note, _plan.MissedShare);

    /// <summary>Where another note is played in place of this one; null where it is right or missed.</summary>
    public Place? WrongPlace(TakeNote note)
    {
        var wrong = _plan.WrongNotes.Contains(note.Number) || Falls(TakeDraw.Wrong, note, _plan.WrongShare);
        return wrong && !IsMissed(note) ? Chosen([.. Near(note)], TakeDraw.WrongPlace, note) : null;
    }

    /// <summary>Place of a stroke too many and its share of the way to the next note; null for none.</summary>
    public (Place Place, double Share)? Extra(TakeNote note)
    {
        var wanted =
            _plan.ExtraNotes.Contains(note.Number)
            || (HasRoom(note) && Falls(TakeDraw.Extra, note, _plan.ExtraShare));
        if (!wanted || IsMissed(note) || WrongPlace(note) is not null)
        {
            return null;
        }

        var place = note.Played.Place;
        var open = Beside(place).Select(number => Place.At(number, 0));
        var share = 0.38 + (0.24 * _chance.Uniform(TakeDraw.ExtraTime, note.Number));
        return (Chosen([place, .. open], TakeDraw.ExtraPlace, note), share);
    }

    private bool HasRoom(TakeNote note) =>
        note.Number + 1 < _notes.Length && note.Room.After >= LeastRoom && !IsSlurred(note.Number + 1);

    // A fret beside; where no slur binds the note, also the pattern's next note or the same fret of a string beside.
    private List<Place> Near(TakeNote note)
    {
        var place = note.Played.Place;
        List<Place> near = [Place.At(place.String, place.Fret + (place.Fret < _neck.PlayableFrets ? 1 : -1))];
        if (place.Fret > 0)
        {
            near.Add(Place.At(place.String, place.Fret - 1));
        }

        if (!IsSlurred(note.Number) && !IsSlurred(note.Number + 1))
        {
            near.AddRange(Beside(place).Select(number => Place.At(number, place.Fret)));
            near.Add(_notes[Math.Min(note.Number + 1, _notes.Length - 1)].Played.Place);
        }

        var before = note.Number > 0 ? _notes[note.Number - 1].Played.Note.Midi : 0;
        var others = near.Where(other => _neck.MidiAt(other) != note.Played.Note.Midi).ToList();
        var moving = others.Where(other => !IsSlurred(note.Number) || _neck.MidiAt(other) != before).ToList();
        return moving.Count > 0 ? moving : others;
    }

    private bool IsSlurred(int number) =>
        number < _notes.Length && _notes[number].Played.Stroke == Stroke.None;

    private IEnumerable<int> Beside(Place place) =>
        new[] { place.String - 1, place.String + 1 }.Where(number =>
            number >= 1 && number <= _neck.Tuning.StringCount
        );

    private bool Falls(TakeDraw draw, TakeNote note, double share) =>
        _chance.Uniform(draw, note.Number) < share;

    private Place Chosen(ImmutableArray<Place> places, TakeDraw draw, TakeNote note) =>
        places[Math.Min((int)(_chance.Uniform(draw, note.Number) * places.Length), places.Length - 1)];
}
