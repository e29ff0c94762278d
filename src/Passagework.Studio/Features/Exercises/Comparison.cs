using System.Globalization;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Two exercises for the same hands, figure beside figure.</summary>
internal static class Comparison
{
    /// <summary>What is compared, and how it is in either.</summary>
    public static IEnumerable<(string What, string Here, string There)> Rows(
        Measurement here,
        Measurement there
    ) => Measures.Select(measure => (measure.What, measure.Of(here), measure.Of(there)));

    private static readonly (string What, Func<Measurement, string> Of)[] Measures =
    [
        ("tops out, beats a minute", one => one.Top is { } top ? $"{top.Plain} ({top.Span})" : "–"),
        ("limited by", one => Limit(one.Ceiling)),
        ("beside the plain scale", one => Share(one.RatioToScale)),
        ("even load, 1 is even", one => Number(one.EvenLoad)),
        ("changes inside, outside", one => $"{one.Picking.Inside}, {one.Picking.Outside}"),
        ("strings passed over", one => $"{one.Picking.Skips}"),
        ("rolls, shifts", one => $"{one.Fretting.Rolls}, {one.Fretting.Shifts}"),
        ("back on a beat after", one => Beats(one.Fit)),
    ];

    private const double Clear = 0.7;

    private static string Limit(Ceiling ceiling)
    {
        if (ceiling.LimitedBy is not { } limit || ceiling.Range is not { } range)
        {
            return "nothing";
        }

        var (share, words) = limit switch
        {
            Hands.Limit.Fretting => (range.FrettingShare, "the fretting hand"),
            Hands.Limit.Picking => (range.PickingShare, "the picking hand"),
            _ => (range.TogetherShare, "both hands together"),
        };
        return share < Clear ? "either hand" : words;
    }

    private static string Beats(GroupFit? fit) =>
        fit is null ? "no groups" : $"{fit.BeatsToRealign} {(fit.BeatsToRealign == 1 ? "beat" : "beats")}";

    private static string Share(double? ratio) =>
        ratio is { } known ? $"{(100 * known).ToString("F0", CultureInfo.InvariantCulture)} of 100" : "–";

    private static string Number(double? value) => value?.ToString("F2", CultureInfo.InvariantCulture) ?? "–";
}
