using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Sound.Performance;

namespace Passagework.Sound.Takes;

/// <summary>A note of a performance as the hands come to it.</summary>
internal sealed record TakeNote
{
    /// <summary>Its place in the order of playing, from 0.</summary>
    public required int Number { get; init; }

    /// <summary>What is played; its index is the one of the score.</summary>
    public required PlayedNote Played { get; init; }

    /// <summary>The time through, from 0.</summary>
    public required int Pass { get; init; }

    /// <summary>Where it falls on the curve of the tempo played, in seconds.</summary>
    public required double Seconds { get; init; }

    /// <summary>Seconds to the note before and to the next; where there is none, those to the other.</summary>
    public required (double Before, double After) Room { get; init; }

    /// <summary>Strings from the note before to this one, positive to thinner ones.</summary>
    public required int Crossing { get; init; }

    /// <summary>Whether the fretting hand has come to another position.</summary>
    public required bool Shifted { get; init; }

    /// <summary>Its tones on the strings, in order of time.</summary>
    public required ImmutableArray<StringEvent> Tones { get; init; }

    /// <summary>The muted strings of a rake into it.</summary>
    public required ImmutableArray<StringEvent> Rake { get; init; }

    /// <summary>All notes of a performance.</summary>
    public static ImmutableArray<TakeNote> Of(Realization realization, TimedPerformance performance)
    {
        var timed = performance.Times.Notes;
        var played = realization.Notes.ToDictionary(note => note.Note.Index);
        var events = performance.EventsByNote();
        var notes = ImmutableArray.CreateBuilder<TakeNote>(timed.Length);
        for (var i = 0; i < timed.Length; i++)
        {
            var (note, before) = (played[timed[i].Note], i > 0 ? played[timed[i - 1].Note] : null);
            notes.Add(
                new TakeNote
                {
                    Number = i,
                    Played = note,
                    Pass = timed[i].Pass,
                    Seconds = timed[i].OnsetSeconds,
                    Room = RoomOf(timed, i),
                    Crossing = before is null ? 0 : before.Place.String - note.Place.String,
                    Shifted = before is not null && before.Position != note.Position,
                    Tones = [.. events[i].Where(e => e.Action != StringAction.Rake)],
                    Rake = [.. events[i].Where(e => e.Action == StringAction.Rake)],
                }
            );
        }

        return notes.MoveToImmutable();
    }

    private static (double Before, double After) RoomOf(ImmutableArray<TimedNote> timed, int i)
    {
        double? before = i > 0 ? timed[i].OnsetSeconds - timed[i - 1].OnsetSeconds : null;
        double? after = i + 1 < timed.Length ? timed[i + 1].OnsetSeconds - timed[i].OnsetSeconds : null;
        var alone = timed[i].EndSeconds - timed[i].OnsetSeconds;
        return (before ?? after ?? alone, after ?? before ?? alone);
    }
}
