using System.Collections.Immutable;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>A tone that is kept.</summary>
/// <param name="Note">The note in the file.</param>
/// <param name="Place">Where it lies; null where the programme chooses.</param>
/// <param name="String">The string it is told to lie on, where the fret is not told.</param>
internal readonly record struct ReadTone(ReadNote Note, Place? Place, int? String);

/// <summary>Keeps of the notes that begin together what one hand can hold.</summary>
internal sealed class ReadChord(ReadPart part, ReadPlaces places, Fretboard neck, bool topOnly)
{
    /// <summary>The tones kept, from high to low; either all have places or none, unless there is only one.</summary>
    public ImmutableArray<ReadTone> Of(ReadNote note, ReadPlace top)
    {
        var first = new ReadTone(note, top.Place, top.String);
        if (note.Chord.Count == 0)
        {
            return [first];
        }

        if (topOnly)
        {
            Remark("chord, only its top note kept", note);
            return [first];
        }

        ImmutableArray<ReadTone> tones = [first, .. note.Chord.SelectMany(OnTheNeck)];
        if (tones.Any(tone => tone.Place is null))
        {
            tones = [.. tones.Select(tone => new ReadTone(tone.Note, null, null))];
        }

        var kept = ChordReach.Keep(
            [.. tones.Select(tone => new ReachedTone(tone.Note.Pitch.Midi, tone.Place))],
            neck
        );
        foreach (var tone in tones.Where((_, number) => !kept.Contains(number)))
        {
            Remark("note of a chord left out: no hand holds it with those above", tone.Note);
        }

        foreach (var tone in kept.Skip(1).Select(number => tones[number].Note))
        {
            if (tone.Length != note.Length)
            {
                Remark("note of a chord given the length of the top one", tone);
            }
        }

        return kept.Length == 1 ? [first] : [.. kept.Select(number => tones[number])];
    }

    private IEnumerable<ReadTone> OnTheNeck(ReadNote tone)
    {
        if (places.Of(tone).TryGet(out var found, out _))
        {
            yield return new ReadTone(tone, found.Place, null);
        }
        else
        {
            Remark("note of a chord left out: it is not on the instrument", tone);
        }
    }

    private void Remark(string text, ReadNote note) =>
        part.Remarks.Add(text, part.SpotAt(note.Bar, note.InBar));
}
