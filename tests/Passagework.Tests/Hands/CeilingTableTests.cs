using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

/// <summary>
/// Ceilings in notes a second, computed for the project by an independent program from the formulas and defaults of
/// the parameter file; two decimals.
/// </summary>
public class CeilingTableTests
{
    public static TheoryData<string, string, string> Alternate =>
        new()
        {
            {
                "box 1 up and down",
                Lines.BoxUpAndDown,
                "2.60/3.04/2.78 3.66/4.20/4.17 5.25/5.74/6.26 8.08/8.74/11.37 11.70/11.45/15.64"
            },
            {
                "threes",
                Lines.Groups(0, 1, 2),
                "2.65/3.00/2.78 3.74/4.15/4.17 5.36/5.67/6.26 8.25/8.63/11.37 11.91/11.31/15.64"
            },
            {
                "fours",
                Lines.Groups(0, 1, 2, 3),
                "2.27/3.07/2.86 3.21/4.25/4.29 4.62/5.80/6.43 7.06/8.81/11.70 9.97/11.51/16.08"
            },
            {
                "fives",
                Lines.Groups(0, 1, 2, 3, 4),
                "2.44/2.78/2.81 3.45/3.85/4.22 4.97/5.28/6.33 7.71/8.15/11.51 11.31/10.81/15.83"
            },
            {
                "sixes",
                Lines.Groups(0, 1, 2, 3, 4, 5),
                "2.27/2.80/2.81 3.12/3.87/4.22 4.35/5.31/6.33 6.52/8.17/11.51 9.35/10.82/15.83"
            },
            {
                "every other note",
                Lines.Groups(0, 2),
                "2.10/3.07/2.92 3.00/4.25/4.38 4.38/5.79/6.58 6.80/8.78/11.96 9.60/11.46/16.44"
            },
            {
                "a pair repeated",
                string.Join(' ', Enumerable.Repeat("4:5 4:7", 12)),
                "3.44/4.55/2.71 4.81/6.25/4.07 6.83/8.33/6.10 10.33/11.90/11.09 14.41/14.71/15.24"
            },
        };

    [Theory]
    [MemberData(nameof(Alternate))]
    public void Ceiling_of_alternate_picking_is_the_tabled_one(string name, string places, string expected) =>
        Assert.Equal($"{name}: {expected}", $"{name}: {Ceilings(Lines.Of(places))}");

    internal static string Ceilings(Line line) =>
        string.Join(' ', Enumerable.Range(0, 5).Select(level => Text(line, Player.At(level))));

    private static string Text(Line line, Player player)
    {
        var demands = Realizer.Plan(line, player).OrThrow().Demands;
        var ceiling = CeilingFinder.Plain(demands, player.Parameters);
        return FormattableString.Invariant(
            $"{ceiling.Fretting:0.00}/{ceiling.Picking:0.00}/{ceiling.Together:0.00}"
        );
    }
}
