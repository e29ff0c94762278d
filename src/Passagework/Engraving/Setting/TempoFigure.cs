using System.Globalization;

namespace Passagework.Engraving.Setting;

/// <summary>Beats a minute in figures.</summary>
internal static class TempoFigure
{
    private const double TwoPlaces = 0.01;

    /// <summary>With two decimal places at most; the slowest with as many as they need.</summary>
    public static string Of(double bpm) =>
        bpm.ToString(bpm < TwoPlaces ? "G2" : "0.##", CultureInfo.InvariantCulture);
}
