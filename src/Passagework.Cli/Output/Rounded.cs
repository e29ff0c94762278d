using System.Text.Json.Nodes;

namespace Passagework.Cli.Output;

/// <summary>Figures for machines: enough digits to compute with, none that only shows the floating point.</summary>
internal static class Rounded
{
    /// <summary>Milliseconds to a thousandth.</summary>
    public static JsonNode? Milliseconds(double? value) => Value(value, 3);

    /// <summary>Rates, shares and ratios to six decimals.</summary>
    public static JsonNode? Figure(double? value) => Value(value, 6);

    private static JsonValue? Value(double? value, int decimals) =>
        value is { } number ? JsonValue.Create(Math.Round(number, decimals)) : null;
}
