using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Shares and tempi as people say them.</summary>
internal static class Shares
{
    private const double Hardly = 0.05;

    /// <summary>Such as <c>seven in ten</c>; <c>none</c>, <c>hardly any</c>, <c>nearly all</c> and <c>all</c> at the ends.</summary>
    public static string InTen(double share) =>
        share switch
        {
            <= 0 => "none",
            < Hardly => "hardly any",
            >= 1 => "all",
            >= 1 - Hardly => "nearly all",
            _ => $"{NumberWords.Of((long)Math.Round(10 * share, MidpointRounding.AwayFromZero))} in ten",
        };

    /// <summary>Whole hundredths, such as <c>88</c>.</summary>
    public static string Hundredths(double share) =>
        Math.Round(100 * share).ToString(CultureInfo.InvariantCulture);

    /// <summary>Two figures set against each other, with as few decimals as tell them apart (two at most).</summary>
    public static string Against(double better, double worse, string unit = "", int least = 0)
    {
        var (one, other) = ("", "");
        for (var decimals = least; decimals <= 2 && one == other; decimals++)
        {
            var format = "0" + (decimals == 0 ? "" : "." + new string('0', decimals));
            one = better.ToString(format, CultureInfo.InvariantCulture);
            other = worse.ToString(format, CultureInfo.InvariantCulture);
        }

        return $"{one}{unit} against {other}";
    }

    /// <summary>A tempo in whole beats a minute.</summary>
    public static string Bpm(double notesPerSecond, int notesPerBeat) =>
        Math.Round(60 * notesPerSecond / notesPerBeat).ToString(CultureInfo.InvariantCulture);
}
