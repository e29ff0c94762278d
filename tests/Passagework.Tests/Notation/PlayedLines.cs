using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Notation;

/// <summary>One entry of a line as tests write it; no place is a rest.</summary>
internal sealed record Entry(Place? Place, Fraction Length)
{
    public int Finger { get; init; }
    public Stroke Stroke { get; init; }
    public Slur Slur { get; init; }
    public bool Accent { get; init; }
    public int? Group { get; init; }
}

/// <summary>Makes what is played out of entries, one after another.</summary>
internal static class PlayedLines
{
    public static Recipe Plain { get; } = new() { Title = "A line" };

    /// <summary>Places such as <c>6:5 8 5:5</c>, all of one length; a bare number stays on the string, <c>r</c> is a rest.</summary>
    public static IEnumerable<Entry> Entries(string places, Fraction length)
    {
        var onString = 1;
        foreach (var word in places.Split(' '))
        {
            if (word == "r")
            {
                yield return new Entry(null, length);
                continue;
            }

            var place = Place.TryParse(word, out var whole)
                ? whole
                : Place.At(onString, int.Parse(word, System.Globalization.CultureInfo.InvariantCulture));
            onString = place.String;
            yield return new Entry(place, length);
        }
    }

    public static Realization Of(Recipe recipe, IEnumerable<Entry> entries)
    {
        var notes = ImmutableArray.CreateBuilder<PlayedNote>();
        var rests = ImmutableArray.CreateBuilder<Rest>();
        var time = recipe.Rhythm.StartOffset;
        foreach (var entry in entries)
        {
            if (entry.Place is { } place)
            {
                notes.Add(Played(recipe, notes.Count, place, time, entry));
            }
            else if (rests.Count > 0 && rests[^1].Onset + rests[^1].Duration == time)
            {
                rests[^1] = new Rest(rests[^1].Onset, rests[^1].Duration + entry.Length);
            }
            else
            {
                rests.Add(new Rest(time, entry.Length));
            }

            time += entry.Length;
        }

        var line = new Line(recipe, [.. notes.Select(played => played.Note)], rests.ToImmutable(), time);
        return new Realization(line, notes.ToImmutable());
    }

    private static PlayedNote Played(Recipe recipe, int index, Place place, Fraction onset, Entry entry)
    {
        var midi = recipe.Instrument.MidiAt(place);
        var note = new LineNote
        {
            Index = index,
            Place = place,
            Midi = midi,
            Pitch = new SpelledPitch(default, 4),
            Onset = onset,
            Duration = entry.Length,
            Group = entry.Group,
            InGroup = entry.Group is null ? null : 0,
            Accent = entry.Accent,
            Slur = entry.Slur,
        };
        return new PlayedNote(note, place, entry.Finger, Math.Max(1, place.Fret), entry.Stroke);
    }
}
