using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>Preference of one number over another: none up to q, whole from p, linear between.</summary>
/// <remarks>With q = p = 0 any difference is a whole preference.</remarks>
/// <param name="Q">The largest difference that means nothing.</param>
/// <param name="P">The smallest that is clear.</param>
internal readonly record struct Preference(double Q, double P)
{
    /// <summary>0 to 1 for a difference; 0 where it is unknown (not a number).</summary>
    public double Of(double difference)
    {
        if (difference >= P && difference > Q)
        {
            return 1;
        }

        return difference > Q ? (difference - Q) / (P - Q) : 0;
    }
}

/// <summary>How strongly a candidate is preferred to the others, less how strongly they are to it.</summary>
/// <remarks>
/// PROMETHEE II with the linear preference (J. P. Brans and B. Mareschal, the chapter on PROMETHEE methods in "Multiple
/// Criteria Decision Analysis", 2005). Of a pair the larger error of the two means nothing; a difference of 0.20 is
/// clear (chosen by us). A missing value is preferred to nothing and nothing to it.
/// </remarks>
public sealed class Promethee : IRankingMethod
{
    private const double ClearDifference = 0.20;

    /// <inheritdoc/>
    public string Id => "promethee";

    /// <inheritdoc/>
    public ImmutableArray<double> Scores(Choice choice)
    {
        var (plus, minus) = Flows(
            choice.Count,
            (a, b) =>
            {
                var sum = 0.0;
                for (var k = 0; k < choice.Weights.Shares.Length; k++)
                {
                    sum += choice.Weights.Shares[k] * Preferred(choice.Table, a, b, k);
                }

                return sum;
            }
        );
        return [.. plus.Zip(minus, (gained, lost) => gained - lost)];
    }

    /// <summary>Mean preference over the others, and of the others over it.</summary>
    internal static (double[] Plus, double[] Minus) Flows(int count, Func<int, int, double> preferred)
    {
        var plus = new double[count];
        var minus = new double[count];
        for (var a = 0; a < count; a++)
        {
            for (var b = 0; b < count; b++)
            {
                var share = a == b ? 0 : preferred(a, b) / (count - 1);
                plus[a] += share;
                minus[b] += share;
            }
        }

        return (plus, minus);
    }

    private static double Preferred(ChoiceTable table, int a, int b, int criterion)
    {
        var (one, other) = (table.Candidates[a].Marks[criterion], table.Candidates[b].Marks[criterion]);
        var preference = new Preference(Math.Max(one.Error, other.Error), ClearDifference);
        return preference.Of((one.Value - other.Value) ?? double.NaN);
    }
}
