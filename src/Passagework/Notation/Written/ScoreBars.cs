using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>All bars of what is played, filled with rests at both ends and written in note values.</summary>
internal static class ScoreBars
{
    public static Outcome<ImmutableArray<ImmutableArray<ScoreNote>>> Of(Realization realization)
    {
        var line = realization.Line;
        var meter = line.Recipe.Rhythm.Meter;
        var bars = ImmutableArray.CreateBuilder<ImmutableArray<ScoreNote>>();
        foreach (var bar in TabBarSplitter.Split(line, realization.Notes))
        {
            if (!BarSpelling.Spell(Full(bar, meter.Bar), meter).TryGet(out var notes, out var fault))
            {
                return fault;
            }

            bars.Add(notes);
        }

        return bars.ToImmutable();
    }

    private static TabBar Full(TabBar bar, Fraction length)
    {
        var first = bar.Events[0];
        var start = length * Fraction.Of((first.Onset / length).Floor());
        var last = bar.Events[^1];
        var events = bar.Events;
        if (first.Onset > start)
        {
            events = events.Insert(0, new TabEvent(null, Tied: false, start, first.Onset - start));
        }

        if (last.End < start + length)
        {
            events = events.Add(new TabEvent(null, Tied: false, last.End, start + length - last.End));
        }

        return new TabBar(Joined(events));
    }

    // Rests next to each other are one.
    private static ImmutableArray<TabEvent> Joined(ImmutableArray<TabEvent> events)
    {
        var joined = ImmutableArray.CreateBuilder<TabEvent>(events.Length);
        foreach (var part in events)
        {
            if (part.Note is null && joined is [.., { Note: null } rest])
            {
                joined[^1] = rest with { Length = rest.Length + part.Length };
            }
            else
            {
                joined.Add(part);
            }
        }

        return joined.ToImmutable();
    }
}
