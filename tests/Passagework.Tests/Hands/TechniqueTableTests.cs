using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

/// <summary>
/// Every technique on five lines: ceilings at the five levels, balance at level 2 and the first twelve strokes,
/// computed for the project by an independent program from the formulas and defaults of the parameter file.
/// </summary>
public class TechniqueTableTests
{
    private const string ThreePerStringUpAndDown =
        Lines.ThreePerString + " 1:8 1:7 2:10 2:8 2:6 3:9 3:7 3:5 4:9 4:7 4:5 5:8 5:7 5:5 6:8 6:7 6:5";

    private static readonly Dictionary<string, string> Exercises = new()
    {
        ["Threes up"] = Lines.Groups(0, 1, 2),
        ["Fives up"] = Lines.Groups(0, 1, 2, 3, 4),
        ["Three a string"] = ThreePerStringUpAndDown,
        ["Low rolls up"] = "6:5 5:5 4:5 | 5:5 4:5 3:5 | 4:5 3:5 2:5 | 3:5 2:5 1:5",
        ["Arpeggio"] = string.Join(" | ", Enumerable.Repeat("5:0 3:2 2:1 1:0", 8)),
    };

    [Theory]
    [InlineData(
        "Threes up",
        "alternate, metric",
        "2.65/3.00/2.78 3.74/4.15/4.17 5.36/5.67/6.26 8.25/8.63/11.37 11.91/11.31/15.64",
        "0.88",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Threes up",
        "economy, sweep",
        "2.65/3.00/2.78 3.74/4.15/4.17 5.36/5.67/6.26 8.25/8.63/11.37 11.91/11.31/15.64",
        "0.88",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Threes up",
        "hybrid",
        "2.65/3.99/2.78 3.74/5.46/4.17 5.36/7.40/6.26 8.25/9.88/11.37 11.91/12.21/15.64",
        "0.73",
        "DUmDDUDUmDDU"
    )]
    [InlineData(
        "Threes up",
        "p-i-m-a",
        "2.65/3.18/2.78 3.74/4.61/4.17 5.36/6.63/6.26 8.25/9.94/11.37 11.91/13.26/15.64",
        "0.68",
        "ipipimipipim"
    )]
    [InlineData(
        "Threes up",
        "i-m",
        "2.65/2.18/2.78 3.74/3.11/4.17 5.36/4.39/6.26 8.25/6.41/11.37 11.91/8.50/15.64",
        "0.81",
        "imimimimimim"
    )]
    [InlineData(
        "Threes up",
        "legato",
        "2.65/3.08/5.56 3.74/4.26/8.34 5.36/5.81/12.51 8.25/8.84/22.75 11.91/11.57/31.28",
        "0.53",
        "D-UDU---DUD-"
    )]
    [InlineData(
        "Fives up",
        "alternate, metric",
        "2.44/2.78/2.81 3.45/3.85/4.22 4.97/5.28/6.33 7.71/8.15/11.51 11.31/10.81/15.83",
        "0.89",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Fives up",
        "economy, sweep",
        "2.44/2.78/2.81 3.45/3.85/4.22 4.97/5.28/6.33 7.71/8.15/11.51 11.31/10.81/15.83",
        "0.81",
        "DUDUDUDUDUUD"
    )]
    [InlineData(
        "Fives up",
        "hybrid",
        "2.44/2.93/2.81 3.45/3.99/4.22 4.97/5.63/6.33 7.71/8.14/11.51 11.31/10.54/15.83",
        "0.74",
        "DUDUmDUDDUUD"
    )]
    [InlineData(
        "Fives up",
        "p-i-m-a",
        "2.44/3.28/2.81 3.45/4.69/4.22 4.97/6.29/6.33 7.71/8.00/11.51 11.31/10.96/15.83",
        "0.67",
        "ipmimpipimpp"
    )]
    [InlineData(
        "Fives up",
        "i-m",
        "2.44/1.91/2.81 3.45/2.75/4.22 4.97/3.92/6.33 7.71/5.80/11.51 11.31/7.75/15.83",
        "0.78",
        "imimimimimim"
    )]
    [InlineData(
        "Fives up",
        "legato",
        "2.44/2.80/5.56 3.45/3.88/8.34 4.97/5.33/12.51 7.71/8.25/22.75 11.31/10.99/31.28",
        "0.61",
        "D-U-DUD-U-D-"
    )]
    [InlineData(
        "Three a string",
        "alternate, metric",
        "2.29/3.11/2.75 3.15/4.31/4.13 4.43/5.88/6.19 6.61/8.94/11.26 9.26/11.71/15.48",
        "0.77",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Three a string",
        "economy, sweep",
        "2.29/3.27/2.75 3.15/4.53/4.13 4.43/6.19/6.19 6.61/9.42/11.26 9.26/12.33/15.48",
        "0.63",
        "DUDDUDDUDDUD"
    )]
    [InlineData(
        "Three a string",
        "hybrid",
        "2.29/3.38/2.75 3.15/4.68/4.13 4.43/6.38/6.19 6.61/9.67/11.26 9.26/12.61/15.48",
        "0.63",
        "DUDDUDDUDDUD"
    )]
    [InlineData(
        "Three a string",
        "p-i-m-a",
        "2.29/3.11/2.75 3.15/4.51/4.13 4.43/6.49/6.19 6.61/9.75/11.26 9.26/13.06/15.48",
        "0.70",
        "impimpimpimp"
    )]
    [InlineData(
        "Three a string",
        "i-m",
        "2.29/2.29/2.75 3.15/3.26/4.13 4.43/4.60/6.19 6.61/6.73/11.26 9.26/8.92/15.48",
        "0.81",
        "imimimimimim"
    )]
    [InlineData(
        "Three a string",
        "legato",
        "1.80/9.34/5.72 2.44/12.92/8.58 3.38/17.63/12.86 5.36/26.83/23.39 7.77/35.14/32.16",
        "0.26",
        "D--U--D--U--"
    )]
    [InlineData(
        "Low rolls up",
        "alternate, metric",
        "2.44/2.95/5.42 3.33/4.09/8.13 4.65/5.58/12.20 6.90/8.49/22.17 9.52/11.11/30.49",
        "0.83",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Low rolls up",
        "economy, sweep",
        "2.44/2.97/5.42 3.33/4.11/8.13 4.65/5.61/12.20 6.90/8.55/22.17 9.52/11.20/30.49",
        "0.63",
        "DDDUDDUDDUDD"
    )]
    [InlineData(
        "Low rolls up",
        "hybrid",
        "2.44/3.91/5.42 3.33/5.35/8.13 4.65/7.26/12.20 6.90/9.67/22.17 9.52/11.95/30.49",
        "0.52",
        "DDmDDmDDmDDD"
    )]
    [InlineData(
        "Low rolls up",
        "p-i-m-a",
        "2.44/3.18/5.42 3.33/4.61/8.13 4.65/6.49/12.20 6.90/9.75/22.17 9.52/13.06/30.49",
        "0.58",
        "pimpimpimpim"
    )]
    [InlineData(
        "Low rolls up",
        "i-m",
        "2.44/2.18/5.42 3.33/3.11/8.13 4.65/4.38/12.20 6.90/6.41/22.17 9.52/8.49/30.49",
        "0.84",
        "imimimimimim"
    )]
    [InlineData(
        "Low rolls up",
        "legato",
        "2.44/2.95/5.42 3.33/4.09/8.13 4.65/5.58/12.20 6.90/8.49/22.17 9.52/11.11/30.49",
        "0.83",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Arpeggio",
        "alternate, metric",
        "2.71/2.43/5.63 3.72/3.37/8.44 5.17/4.65/12.66 7.73/7.27/23.03 11.01/9.78/31.66",
        "0.49",
        "DUDUDUDUDUDU"
    )]
    [InlineData(
        "Arpeggio",
        "economy, sweep",
        "2.71/2.32/5.63 3.72/3.21/8.44 5.17/4.44/12.66 7.73/6.98/23.03 11.01/9.46/31.66",
        "0.40",
        "DDDDUDDDUDDD"
    )]
    [InlineData(
        "Arpeggio",
        "hybrid",
        "2.71/3.85/5.63 3.72/5.26/8.44 5.17/7.14/12.66 7.73/8.89/23.03 11.01/11.44/31.66",
        "0.42",
        "DmamDmamDmam"
    )]
    [InlineData(
        "Arpeggio",
        "p-i-m-a",
        "2.71/3.89/5.63 3.72/5.34/8.44 5.17/7.18/12.66 7.73/9.83/23.03 11.01/12.45/31.66",
        "0.35",
        "pimapimapima"
    )]
    [InlineData(
        "Arpeggio",
        "i-m",
        "2.71/1.74/5.63 3.72/2.53/8.44 5.17/3.63/12.66 7.73/5.45/23.03 11.01/7.36/31.66",
        "0.46",
        "imimimimimim"
    )]
    [InlineData(
        "Arpeggio",
        "legato",
        "2.71/2.43/5.63 3.72/3.37/8.44 5.17/4.65/12.66 7.73/7.27/23.03 11.01/9.78/31.66",
        "0.49",
        "DUDUDUDUDUDU"
    )]
    public void Figures_are_the_tabled_ones(
        string exercise,
        string techniques,
        string ceilings,
        string balance,
        string strokes
    )
    {
        foreach (var technique in techniques.Split(", "))
        {
            var line = Lines.Of(Exercises[exercise], RecipeOf(technique));
            var measured = Realizer.Plan(line, Player.At(2)).OrThrow();

            Assert.Equal(ceilings, CeilingTableTests.Ceilings(line));
            Assert.Equal(
                strokes,
                string.Concat(measured.Strokes.Strokes.Take(12).Select(PickingCounts.LetterOf))
            );
            Assert.Equal(balance, BalanceOf(measured));
        }
    }

    private static string BalanceOf(PlannedLine line)
    {
        var basis = Player.At(2).Parameters.Basis;
        var value = Balance.Of(
            line.Demands.Fretting.Milliseconds(basis),
            line.Demands.Picking.Milliseconds(basis)
        );
        return FormattableString.Invariant($"{value:0.00}");
    }

    private static Recipe RecipeOf(string technique) =>
        technique switch
        {
            "p-i-m-a" => Lines.With(Technique.Fingers),
            "i-m" => Lines.With(Technique.Fingers, fingers: FingerOrder.IndexMiddle),
            _ => Lines.With(Enum.Parse<Technique>(technique, ignoreCase: true)),
        };
}
