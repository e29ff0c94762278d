using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>A place that is played.</summary>
/// <param name="Tone">The first tone played there.</param>
/// <param name="Note">Index of its note in the line.</param>
/// <param name="Order">Number of its note on the picture, from 1.</param>
internal readonly record struct NeckVisit(PlayedTone Tone, int Note, int Order);

/// <summary>What a drawn neck shows: the notes played, where the next group begins, and the layout they lie in.</summary>
internal sealed record NeckNotes
{
    // A longer way cannot be followed by eye, nor can that of many groups over the same places.
    private const int MostRouteNotes = 48;

    private NeckNotes() { }

    /// <summary>The notes that count as played, in order.</summary>
    public required ImmutableArray<PlayedNote> Played { get; init; }

    /// <summary>The first note of the next group; null where there is none.</summary>
    public required PlayedNote? Next { get; init; }

    /// <summary>Whether the played notes are one group of several.</summary>
    public required bool IsOneGroup { get; init; }

    /// <summary>Places of the layout that are not played.</summary>
    public required ImmutableArray<Place> Hollow { get; init; }

    /// <summary>Each played place once, with the first tone played there; the tones of a chord share their number.</summary>
    public ImmutableArray<NeckVisit> Visits { get; private init; } = [];

    /// <summary>Whether lines from note to note can be followed by eye.</summary>
    public required bool CanBeFollowed { get; init; }

    /// <summary>All places that need a spot on the picture.</summary>
    public IEnumerable<Place> Places => Visits.Select(visit => visit.Tone.Place).Concat(Hollow);

    public static Outcome<NeckNotes> Of(Realization realization, NotesShown shown)
    {
        var recipe = realization.Line.Recipe;
        if (recipe is not { Layout: { } layout, Notes: { } notes })
        {
            return Choose(realization, [], shown);
        }

        return LayoutPlanner
            .Lay(layout, notes, recipe.Instrument)
            .Then<NeckNotes>(path => Choose(realization, path.Places, shown));
    }

    private static NeckNotes Choose(Realization realization, ImmutableArray<Place> path, NotesShown shown)
    {
        var all = realization.Notes;
        var first = FirstGroup(all);
        var isPlain = first.Length == all.Length || OnePlace(first);
        var whole = shown == NotesShown.WholeLine || isPlain;
        var played = whole ? all : first;
        var after = played[^1].Note.Index + 1;
        var places = played.SelectMany(note => note.Tones).Select(tone => tone.Place).ToHashSet();
        return new NeckNotes
        {
            Played = played,
            Next = whole || after >= all.Length ? null : all[after],
            IsOneGroup = !whole,
            CanBeFollowed = played.Length <= MostRouteNotes && (isPlain || !whole),
            Hollow =
            [
                .. path.Concat(all.SelectMany(note => note.Tones).Select(tone => tone.Place))
                    .Distinct()
                    .Where(place => !places.Contains(place)),
            ],
            Visits =
            [
                .. played
                    .SelectMany(
                        (note, index) =>
                            note.Tones.Select(tone => new NeckVisit(tone, note.Note.Index, index + 1))
                    )
                    .DistinctBy(visit => visit.Tone.Place),
            ],
        };
    }

    private static ImmutableArray<PlayedNote> FirstGroup(ImmutableArray<PlayedNote> all)
    {
        var start = all.FirstOrDefault(note => note.Note.Group is not null);
        return start is null
            ? all
            : [.. all.Skip(start.Note.Index).TakeWhile(note => note.Note.Group == start.Note.Group)];
    }

    private static bool OnePlace(ImmutableArray<PlayedNote> notes) =>
        notes.All(note => note.Place == notes[0].Place);
}
