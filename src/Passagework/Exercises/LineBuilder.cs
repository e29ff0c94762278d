using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;
using Path = Passagework.Instrument.Path;

namespace Passagework.Exercises;

/// <summary>From the idea of an exercise to its notes: layout, path, cells, rhythm, ending.</summary>
/// <example>
/// Groups of three over box 1 of A minor pentatonic begin <c>6:5 6:8 5:5 | 6:8 5:5 5:7</c>.
/// </example>
public static class LineBuilder
{
    /// <summary>The line of a recipe; a fault names the JSON path of what stands in the way.</summary>
    public static Outcome<Line> Build(Recipe recipe)
    {
        if (RecipeRules.Check(recipe) is { } outOfRange)
        {
            return outOfRange;
        }

        return recipe switch
        {
            { Written: { } written } => new WrittenLineReader(recipe)
                .Read(written)
                .Then(draft => Finish(recipe, draft)),
            { Layout: { } layout, Notes: { } notes, Cell: { } cell } => Lay(layout, notes, recipe.Instrument)
                .Then(path => PathRange.Of(path, recipe.Movement))
                .Then(range => Move(recipe, cell, range))
                .Then(draft => Finish(recipe, draft)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static Outcome<Path> Lay(Layout layout, NoteSet notes, Fretboard instrument) =>
        LayoutPlanner.Lay(layout, notes, instrument).TryGet(out var path, out var fault)
            ? path
            : fault.At("$.layout");

    private static Outcome<Draft> Move(Recipe recipe, Cell cell, PathRange range)
    {
        if (!CellWalk.Steps(range, cell, recipe.Movement).TryGet(out var steps, out var fault))
        {
            return fault;
        }

        var draft = new CellLine(recipe, cell, range).Write(steps);
        return new LineEnding(recipe, range, draft).Add() is { } noRoot ? noRoot : draft;
    }

    private static Outcome<Line> Finish(Recipe recipe, Draft draft)
    {
        for (var index = 0; index < recipe.Fretting.Locks.Length; index++)
        {
            if (recipe.Fretting.Locks[index].Note >= draft.Notes.Count)
            {
                return new Fault(
                    $"there is no note {recipe.Fretting.Locks[index].Note} to lock",
                    $"$.fretting.locks[{index}].note",
                    $"the line has notes 0 to {draft.Notes.Count - 1}"
                );
            }
        }

        return new Line(recipe, Numbered(recipe, draft.Notes), [.. draft.Rests], draft.End);
    }

    private static ImmutableArray<LineNote> Numbered(Recipe recipe, List<DraftNote> notes)
    {
        var keys = notes.ConvertAll(note =>
            KeyOf(new WrittenTone(note.Place, note.Pitch), recipe.Instrument)
        );
        // What is written as if the capo were the nut sounds higher, and is spelled where it sounds.
        var sounding = recipe.Notes?.Transposed(recipe.Instrument.Capo);
        var names = Speller.Spell(sounding, keys, notes.ConvertAll(note => note.Group));
        return
        [
            .. notes.Select(
                (note, index) =>
                    new LineNote
                    {
                        Index = index,
                        Place = note.Place,
                        Midi = keys[index],
                        Pitch = note.Pitch ?? names[index],
                        With = Spelled(note.With, sounding, recipe.Instrument),
                        Onset = note.Onset,
                        Duration = note.Duration,
                        Group = note.Group,
                        InGroup = note.InGroup,
                        Accent = note.Accent,
                        Slur = note.Slur,
                    }
            ),
        ];
    }

    private static ImmutableArray<LineTone> Spelled(
        ImmutableArray<WrittenTone> tones,
        NoteSet? sounding,
        Fretboard instrument
    )
    {
        if (tones.IsEmpty)
        {
            return [];
        }

        var keys = tones.Select(tone => KeyOf(tone, instrument)).ToList();
        var names = Speller.Spell(sounding, keys, keys.ConvertAll(_ => (int?)null));
        return
        [
            .. tones.Select(
                (tone, index) => new LineTone(tone.Place, keys[index], tone.Pitch ?? names[index])
            ),
        ];
    }

    internal static int KeyOf(WrittenTone tone, Fretboard instrument) =>
        tone switch
        {
            { Place: { } place } => instrument.MidiAt(place),
            { Pitch: { } pitch } => pitch.Midi,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
