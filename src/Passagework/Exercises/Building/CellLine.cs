using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>Gives the entries of a moved cell their time, accents and slurs.</summary>
internal sealed class CellLine(Recipe recipe, Cell cell, PathRange range)
{
    private readonly int _firstNote = cell.Offsets.IndexOf(cell.Offsets.First(offset => offset is not null));

    public Draft Write(List<CellStep> steps)
    {
        var draft = new Draft(recipe.Rhythm.StartOffset);
        for (var number = 0; number < steps.Count; number++)
        {
            var step = steps[number];
            var duration = Duration(step, number);
            if (step.PathIndex is { } index)
            {
                draft.Add(Note(step, index, draft.Notes.LastOrDefault()?.Place), duration);
            }
            else
            {
                draft.AddRest(duration);
            }
        }

        return draft;
    }

    private Fraction Duration(CellStep step, int number)
    {
        var rhythm = recipe.Rhythm;
        if (!rhythm.Pattern.IsEmpty)
        {
            return rhythm.Pattern[number % rhythm.Pattern.Length];
        }

        return cell.Durations.IsEmpty ? rhythm.Pulse : cell.Durations[step.Entry] * rhythm.Pulse;
    }

    private DraftNote Note(CellStep step, int index, Place? previous)
    {
        var place = range.PlaceAt(index);
        return new DraftNote
        {
            Place = place,
            PathIndex = index,
            Group = step.Group,
            InGroup = step.InGroup,
            Accent = cell.Accents.Contains(step.Entry),
            Slur = IsSlurred(step, place, previous) ? Slur.Slurred : Slur.None,
        };
    }

    /// <summary>Whether a note is reached without a stroke.</summary>
    /// <remarks>
    /// Where a shared turn has left out the first note of a cell, the shared note stands for it: it has the same
    /// place, so the rest of the cell is slurred as ever.
    /// </remarks>
    private bool IsSlurred(CellStep step, Place place, Place? previous)
    {
        if (place == previous)
        {
            return false;
        }

        return cell.Slurs.SameString
            ? step.Entry != _firstNote && place.String == previous?.String
            : cell.Slurs.Entries.Contains(step.Entry);
    }
}
