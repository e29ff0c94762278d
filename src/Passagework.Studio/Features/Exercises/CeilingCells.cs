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

    private static (string, string?) Cell(double? value, double? least, string style) =>
        (
            value?.ToString("F2", CultureInfo.InvariantCulture) ?? "–",
            value is not null && value == least ? style : null
        );
}
