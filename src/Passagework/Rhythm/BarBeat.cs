using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Where in a piece something stands, as players count.</summary>
/// <param name="Bar">From 1; a pick-up stands in bar 1.</param>
/// <param name="Beat">Felt beats from 1, such as <c>5/2</c> for the second half of the second.</param>
public readonly record struct BarBeat(long Bar, Fraction Beat)
{
    /// <summary>The spot of a time counted from the first bar line.</summary>
    public static BarBeat Of(Fraction onset, Meter meter) =>
        new((onset / meter.Bar).Floor() + 1, (onset.Modulo(meter.Bar) / meter.Beat) + Fraction.One);

    /// <summary>As people say it, such as <c>bar 12, beat 2½</c>; other parts than halves, thirds and quarters stand behind a plus.</summary>
    public string Words
    {
        get
        {
            var sign = (Beat - Fraction.Of(Beat.Floor())).ToString() switch
            {
                "0" => "",
                "1/2" => "½",
                "1/4" => "¼",
                "3/4" => "¾",
                "1/3" => "⅓",
                "2/3" => "⅔",
                var other => $" + {other}",
            };
            return string.Create(CultureInfo.InvariantCulture, $"bar {Bar}, beat {Beat.Floor()}{sign}");
        }
    }

    /// <summary>Such as <c>bar 12, beat 5/2</c>, exact.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"bar {Bar}, beat {Beat}");
}
