using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>A note, the held-on part of one, or a rest, inside one bar.</summary>
/// <param name="Note">Null for a rest.</param>
/// <param name="Tied">Whether this only holds on the note before.</param>
/// <param name="Onset">As a fraction of a whole note after the first bar line.</param>
/// <param name="Length">As a fraction of a whole note.</param>
internal sealed record TabEvent(PlayedNote? Note, bool Tied, Fraction Onset, Fraction Length)
{
    public Fraction End => Onset + Length;
}

/// <summary>The events between two bar lines.</summary>
internal sealed record TabBar(ImmutableArray<TabEvent> Events);

/// <summary>Cuts a line at its bar lines; what crosses one is tied.</summary>
internal static class TabBarSplitter
{
    public static ImmutableArray<TabBar> Split(Line line, ImmutableArray<PlayedNote> notes)
    {
        var bar = line.Recipe.Rhythm.Meter.Bar;
        var bars = ImmutableArray.CreateBuilder<TabBar>();
        var events = ImmutableArray.CreateBuilder<TabEvent>();
        foreach (var part in Spans(line, notes).SelectMany(span => Pieces(span, bar)))
        {
            events.Add(part);
            if ((part.End / bar).IsWhole)
            {
                bars.Add(new TabBar(events.DrainToImmutable()));
            }
        }

        if (events.Count > 0)
        {
            bars.Add(new TabBar(events.DrainToImmutable()));
        }

        return bars.DrainToImmutable();
    }

    // Notes and rests in order of time, with rests where nothing was written.
    private static IEnumerable<TabEvent> Spans(Line line, ImmutableArray<PlayedNote> notes)
    {
        var written = notes
            .Select(note => new TabEvent(note, false, note.Note.Onset, note.Note.Duration))
            .Concat(line.Rests.Select(rest => new TabEvent(null, false, rest.Onset, rest.Duration)))
            .OrderBy(span => span.Onset);
        var time = line.Recipe.Rhythm.StartOffset;
        foreach (var span in written)
        {
            if (span.Onset < time)
            {
                throw new ArgumentException($"Notes or rests overlap at {span.Onset}.", nameof(line));
            }

            if (span.Onset > time)
            {
                yield return new TabEvent(null, false, time, span.Onset - time);
            }

            yield return span;
            time = span.End;
        }

        if (line.End > time)
        {
            yield return new TabEvent(null, false, time, line.End - time);
        }
    }

    private static IEnumerable<TabEvent> Pieces(TabEvent span, Fraction bar)
    {
        var start = span.Onset;
        while (start < span.End)
        {
            var barEnd = bar * Fraction.Of((start / bar).Floor() + 1);
            var end = span.End < barEnd ? span.End : barEnd;
            yield return new TabEvent(
                span.Note,
                span.Note is not null && start != span.Onset,
                start,
                end - start
            );
            start = end;
        }
    }
}
