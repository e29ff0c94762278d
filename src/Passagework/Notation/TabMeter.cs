using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>What the lengths of the bars tell where it isn't written.</summary>
internal static class TabMeter
{
    /// <summary>The metre of the length that all bars between the first and the last share; else 4/4.</summary>
    public static Meter Guess(IReadOnlyList<TabReadBar> bars)
    {
        var inner = bars.Skip(1).SkipLast(1).Select(TabTimes.LengthOf).Distinct().ToList();
        if (inner is not [var bar] || bar == Fraction.One)
        {
            return default;
        }

        foreach (var unit in new[] { 4, 8, 16 })
        {
            var beats = bar * Fraction.Of(unit);
            var text = string.Create(CultureInfo.InvariantCulture, $"{beats}/{unit}");
            if (beats.IsWhole && Meter.TryParse(text, out var meter))
            {
                return meter;
            }
        }

        return default;
    }

    /// <summary>How late a first bar begins that is shorter than a bar, with others behind it.</summary>
    public static Fraction PickUp(IReadOnlyList<TabReadBar> bars, Meter meter, TabFindings findings)
    {
        var first = TabTimes.LengthOf(bars[0]);
        if (bars.Count < 2 || first >= meter.Bar)
        {
            return Fraction.Zero;
        }

        findings.Warn("the first bar is short and read as a pick-up", bars[0].Spot);
        return meter.Bar - first;
    }
}
