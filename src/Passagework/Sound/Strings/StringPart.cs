using System.Collections.Immutable;

namespace Passagework.Sound.Strings;

/// <summary>All strokes of one string in order, each knowing what it follows and what ends it.</summary>
internal sealed class StringPart
{
    /// <summary>A slur takes over a string whose end lies this much before it; a shorter gap is no gap.</summary>
    private const double Gap = 0.002;

    private readonly Stroke[] _strokes;

    /// <summary>The strokes of a string's events.</summary>
    public StringPart(IEnumerable<(StringEvent Event, int Ordinal)> events, Voicing voicing, int sampleRate)
    {
        var sorted = events.OrderBy(e => e.Event.Seconds).ThenBy(e => e.Ordinal).ToArray();
        _strokes = new Stroke[sorted.Length];
        for (var i = 0; i < sorted.Length; i++)
        {
            var before = i > 0 ? sorted[i - 1].Event : null;
            var after = i + 1 < sorted.Length ? sorted[i + 1].Event : null;
            _strokes[i] = Make(sorted[i], (before, after), voicing, sampleRate);
        }

        Link();
    }

    /// <summary>The strokes in order.</summary>
    public ReadOnlySpan<Stroke> Strokes => _strokes;

    /// <summary>Index of the first stroke that starts at or after a sample.</summary>
    public int FirstFrom(long sample)
    {
        var (low, high) = (0, _strokes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _strokes[middle].First < sample ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static Stroke Make(
        (StringEvent Event, int Ordinal) item,
        (StringEvent? Before, StringEvent? After) around,
        Voicing voicing,
        int sampleRate
    )
    {
        var note = item.Event;
        var fresh = around.Before is not { } before || !TakesOver(before, note);
        var ends = around.After is not { } after || !TakesOver(note, after);
        // A slide out of nothing is a plucked note.
        var contact = Contact.Of(
            fresh && note.Action is StringAction.Slide ? StringAction.Down : note.Action
        );
        return new()
        {
            Event = note,
            Contact = contact,
            Ordinal = item.Ordinal,
            Start = note.Seconds * sampleRate,
            Fresh = fresh,
            Release = ends ? Math.Max(note.EndSeconds, note.Seconds) * sampleRate : double.PositiveInfinity,
            KeyBefore = fresh ? null : around.Before?.Key,
            Lead = PulseMaker.Lead * PulseMaker.Width(contact, note, voicing, sampleRate),
            Fade = (note.Release ?? RingOver.Lift).Seconds * sampleRate,
        };
    }

    private static bool TakesOver(StringEvent before, StringEvent note) =>
        Contact.IsSlur(note.Action) && before.EndSeconds >= note.Seconds - Gap;

    private void Link()
    {
        for (var i = 0; i + 1 < _strokes.Length; i++)
        {
            var next = _strokes[i + 1];
            if (next.Fresh)
            {
                _strokes[i].Cut = next.First;
            }
            else
            {
                _strokes[i].Slur = next;
            }
        }
    }
}
