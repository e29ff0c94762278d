using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>The group numbers of a line: rising, and for all notes or for none.</summary>
internal sealed class ReadGroups(IReadOnlyList<ReadNote> notes, Remarks remarks)
{
    public ImmutableArray<int?> Numbers()
    {
        var numbers = ImmutableArray.CreateBuilder<int?>(notes.Count);
        var last = -1;
        var told = notes.Any(note => note.Group is not null);
        for (var index = 0; index < notes.Count && told; index++)
        {
            var number = notes[index].Group;
            if (number is < 0 or > LengthRules.MostNotes || number < last)
            {
                remarks.Add("groups that do not rise left out", "");
                return [.. notes.Select(_ => (int?)null)];
            }

            // A note outside all groups (an ending) begins one of its own, which the next such note joins.
            if (number is null)
            {
                remarks.Add("note outside all groups, counted as a group", "");
                number = index > 0 && notes[index - 1].Group is null ? last : last + 1;
            }

            numbers.Add(number);
            last = number.Value;
        }

        return told ? numbers.ToImmutable() : [.. notes.Select(_ => (int?)null)];
    }
}
