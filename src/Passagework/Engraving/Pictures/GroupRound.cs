using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Engraving.Pictures;

/// <summary>The pulses of a line's groups until all repeats: which start a group and which hold a note.</summary>
/// <param name="Starts">Group starts; one group where all have the same length.</param>
/// <param name="Notes">Pulses of the pass that hold a note, ascending.</param>
/// <param name="Sentence">Which parts of the beat the accents visit, and when all comes home; null where none can be said.</param>
internal sealed record GroupRound(Pass Starts, ImmutableArray<int> Notes, string? Sentence)
{
    /// <summary>The round of a line; a fault where its groups are not made of pulses.</summary>
    public static Outcome<GroupRound> Of(Line line)
    {
        var shapes = LineGroups.Of(line);
        if (Pass.OfStarts(shapes) is { } starts)
        {
            var rhythm = line.Recipe.Rhythm;
            var fit = GroupFit.Of(shapes, rhythm.Meter, rhythm.NotesPerBeat);
            return new GroupRound(starts, Onsets(line, starts.Length), fit?.Sentence);
        }

        return shapes.IsEmpty
            ? new Fault("the line has no groups to set against the beat", Right: "a cell, or groups of notes")
            : new Fault(
                "the groups last no whole number of pulses",
                "$.rhythm",
                "note lengths that are whole pulses"
            );
    }

    /// <summary>Beats until the round begins on a beat again.</summary>
    public long Beats(int notesPerBeat) => WholeNumbers.Lcm(Starts.Length, notesPerBeat) / notesPerBeat;

    /// <summary>Bars until the round begins on a first beat again.</summary>
    public long Bars(int notesPerBeat, Meter meter) =>
        Starts.Length / WholeNumbers.Gcd(Starts.Length, notesPerBeat * meter.BeatsPerBar);

    /// <summary>Whether a group starts at a pulse counted from the first.</summary>
    public bool StartsAt(long pulse) => Starts.Marks.BinarySearch((int)(pulse % Starts.Length)) >= 0;

    /// <summary>Whether every group starts on a beat.</summary>
    public bool IsLocked(int notesPerBeat) =>
        Starts.Length % notesPerBeat == 0 && Starts.Marks.All(mark => mark % notesPerBeat == 0);

    /// <summary>Whether a note is held, or silence lasts, beyond its pulse.</summary>
    public bool HasGaps => Notes.Length < Starts.Length;

    /// <summary>Whether a note is struck or slurred there.</summary>
    public bool SoundsAt(long pulse) => Notes.BinarySearch((int)(pulse % Starts.Length)) >= 0;

    // Notes between pulses are left out: they have no place on a row of pulses.
    private static ImmutableArray<int> Onsets(Line line, int length)
    {
        var grouped = line.Notes.Where(note => note.Group is not null).ToList();
        var start = grouped[0].Onset;
        var pulse = line.Recipe.Rhythm.Pulse;
        return
        [
            .. grouped
                .Select(note => (note.Onset - start) / pulse)
                .Where(at => at.IsWhole && at < Fraction.Of(length))
                .Select(at => (int)at.Numerator),
        ];
    }
}
