using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>Where a note is fretted, from string, fret and pitch as a file tells them.</summary>
internal sealed class ReadPlaces(ReadPart part, Fretboard neck)
{
    /// <summary>The place; null when only the pitch is known, which then has some place.</summary>
    public Outcome<ReadPlace> Of(ReadNote note)
    {
        var told = note.Signs is { String: >= 1 and <= 8, Fret: >= 0 and <= 36 }
            ? Checked(note, Place.At(note.Signs.String.Value, note.Signs.Fret.Value))
            : null;
        if (told is not null)
        {
            return new ReadPlace(told, null);
        }

        if (!neck.PlacesOf(note.Pitch.Midi).Any())
        {
            return OffTheNeck(note);
        }

        var alone = note.Signs is { String: { } number, Fret: null } && IsOn(number, note.Pitch.Midi);
        return new ReadPlace(null, alone ? note.Signs.String : null);
    }

    private bool IsOn(int number, int midi) => neck.PlacesOf(midi).Any(place => place.String == number);

    private Place? Checked(ReadNote note, Place place)
    {
        if (neck.Has(place))
        {
            var above = note.Pitch.Midi - neck.MidiAt(place);
            if (above == 0)
            {
                return place;
            }

            if (above % 12 == 0)
            {
                Remark(note, "string and fret sound octaves away from the pitch; string and fret kept");
                return place;
            }
        }

        var fromNut = place.Fret - neck.Capo;
        if (neck.Capo > 0 && fromNut >= 0 && IsAt(Place.At(place.String, fromNut), note.Pitch.Midi))
        {
            Remark(note, "frets counted from the nut, not from the capo");
            return Place.At(place.String, fromNut);
        }

        Remark(note, "string and fret do not sound the pitch; the pitch kept");
        return null;
    }

    private bool IsAt(Place place, int midi) => neck.Has(place) && neck.MidiAt(place) == midi;

    private Fault OffTheNeck(ReadNote note)
    {
        var strings = Enumerable
            .Range(1, neck.Tuning.StringCount)
            .Select(number => neck.Tuning.Open(number))
            .ToList();
        var lowest = strings.MinBy(open => open.Midi);
        var highest = strings.MaxBy(open => open.Midi);
        var side = note.Pitch.Midi < lowest.Midi + neck.Capo ? "below the lowest string" : "beyond the frets";
        return new Fault(
            $"{note.Pitch} lies {side}",
            part.SpotAt(note.Bar, note.InBar),
            $"pitches from {neck.PlayableFrets} frets on strings {lowest} to {highest}, or another part or instrument"
        );
    }

    private void Remark(ReadNote note, string text) =>
        part.Remarks.Add(text, part.SpotAt(note.Bar, note.InBar));
}

/// <summary>What is known of a place: all of it, or perhaps the string.</summary>
internal sealed record ReadPlace(Place? Place, int? String);
