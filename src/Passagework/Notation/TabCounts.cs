using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Lengths from a row of counts such as <c>1 e &amp; a</c>.</summary>
internal static class TabCounts
{
    /// <summary>
    /// Gives every event of a bar the time to the next one, the last the time to the end of the bar; a gap before the
    /// first is a rest. False, and nothing changed, unless every event has a count and the counts rise.
    /// </summary>
    public static bool TryTime(TabReadBar bar, Meter meter)
    {
        var unit = Fraction.Of(1, meter.WrittenUnit);
        var starts = bar.Events.ConvertAll(note =>
            note.CountedAt is { } count ? count * unit : (Fraction?)null
        );
        if (starts.Contains(null) || starts[^1] >= meter.Bar)
        {
            return false;
        }

        var ends = starts.Skip(1).Append(meter.Bar).ToList();
        if (starts.Zip(ends).Any(pair => pair.First >= pair.Second))
        {
            return false;
        }

        foreach (var (note, (start, end)) in bar.Events.Zip(starts.Zip(ends)))
        {
            note.Length = end - start;
        }

        if (starts[0] is { } gap && gap > Fraction.Zero)
        {
            bar.Events.Insert(0, RestBefore(bar.Events[0], gap));
        }

        return true;
    }

    private static TabReadEvent RestBefore(TabReadEvent first, Fraction length) =>
        new()
        {
            Column = first.Column,
            End = first.Column,
            Spot = first.Spot,
            Length = length,
        };
}
