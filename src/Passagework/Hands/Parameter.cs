using System.Collections.Immutable;

namespace Passagework.Hands;

/// <summary>One parameter of a player's hands, with its default at the five levels and how well it is known.</summary>
/// <param name="Id">The letter used in player files, such as <c>A</c> or <c>b_L</c>.</param>
/// <param name="Unit">ms, ms/bit or 1.</param>
/// <param name="Meaning">What it measures.</param>
/// <param name="Values">Defaults for levels 0 (beginner) to 4 (expert).</param>
/// <param name="Mark">How well the defaults are known.</param>
/// <param name="Spread">Standard deviation of the logarithm (see <see cref="ParameterDraws"/> for ω and φ); 0 for a fixed one.</param>
/// <param name="Source">Where the values come from.</param>
/// <param name="Floor">No value below it is taken; null when there is none.</param>
public sealed record Parameter(
    string Id,
    string Unit,
    string Meaning,
    ImmutableArray<double> Values,
    Provenance Mark,
    double Spread,
    string Source,
    double? Floor
);

/// <summary>One constant of the hands model that does not depend on the player.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit; 1 for a pure number.</param>
/// <param name="Meaning">What it measures.</param>
/// <param name="Mark">How well it is known.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Constant(
    string Id,
    double Value,
    string Unit,
    string Meaning,
    Provenance Mark,
    string Source
);
