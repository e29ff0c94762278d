using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>How each note is reached that has no stroke.</summary>
internal static class PlayedSlurs
{
    /// <summary>One for each note: hammer, pull or slide, none for a struck one.</summary>
    public static ImmutableArray<Slur> Of(ImmutableArray<PlayedNote> notes) =>
        [.. notes.Select((note, index) => index == 0 ? Slur.None : Between(notes[index - 1], note))];

    // A slur whose kind is left open is read off the hands: the same finger slides, else the direction tells.
    private static Slur Between(PlayedNote before, PlayedNote to)
    {
        var tones = before.Tones.Where(tone => tone.Place.String == to.Place.String).ToList();
        var from = tones.Count > 0 ? tones[0] : before.Tones.First();
        var sameString = tones.Count > 0;
        return to switch
        {
            { Stroke: not Stroke.None } => Slur.None,
            { Note.Slur: Slur.Hammer or Slur.Pull or Slur.Slide } => to.Note.Slur,
            _ when from.Place == to.Place => Slur.None,
            _ when sameString && from.Finger == to.Finger && to.Finger > 0 => Slur.Slide,
            _ when sameString && from.Place.Fret > to.Place.Fret => Slur.Pull,
            _ => Slur.Hammer,
        };
    }
}
