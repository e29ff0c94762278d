using System.Globalization;
using Passagework.Hands;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Ceilings as they stand in a table.</summary>
internal static class CeilingCells
{
    /// <summary>Fretting, picking, together, each with the class of the least: bold, underlined in the hand's own line.</summary>
    public static IEnumerable<(string Value, string? Style)> Of(Ceiling ceiling)
    {
        yield return Cell(ceiling.Fretting, ceiling.Least, "least fretting");
        yield return Cell(ceiling.Picking, ceiling.Least, "least picking");
        yield return Cell(ceiling.Together, ceiling.Least, "least");
    }

    /// <summary>Beats a minute, whole; a dash where nothing limits.</summary>
    public static string Whole(double? value) => value?.ToString("F0", CultureInfo.InvariantCulture) ?? "–";

    private static (string, string?) Cell(double? value, double? least, string style) =>
        (
            value?.ToString("F2", CultureInfo.InvariantCulture) ?? "–",
            value is not null && value == least ? style : null
        );
}
