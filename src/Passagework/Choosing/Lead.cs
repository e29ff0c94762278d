using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>What puts one candidate ahead of another, criterion by criterion.</summary>
/// <param name="Terms">Weight × difference of the values, one a criterion; above 0 speaks for the first.</param>
/// <param name="Error">Standard deviation of the margin if all errors are independent.</param>
public sealed record Lead(ImmutableArray<double> Terms, double Error)
{
    /// <summary>Difference of the weighted sums: exactly the sum of the terms.</summary>
    public double Margin { get; } = Terms.Sum();

    /// <summary>
    /// The chance that the first is truly ahead if the errors are normal and independent; they seldom are, so shared
    /// draws (<see cref="DrawShares"/>) say it better where there are any.
    /// </summary>
    public double ChanceAhead =>
        Error > 0 ? NormalDistribution.Below(Margin / Error) : 0.5 * (1 + Math.Sign(Margin));

    /// <summary>Compares two candidates of a choice.</summary>
    public static Lead Of(Choice choice, int first, int second)
    {
        var shares = choice.Weights.Shares;
        var terms = ImmutableArray.CreateBuilder<double>(shares.Length);
        var variance = 0.0;
        for (var k = 0; k < shares.Length; k++)
        {
            terms.Add(shares[k] * (choice.Table.Counted(first, k) - choice.Table.Counted(second, k)));
            variance += shares[k] * shares[k] * (Variance(choice, first, k) + Variance(choice, second, k));
        }

        return new Lead(terms.MoveToImmutable(), Math.Sqrt(variance));
    }

    private static double Variance(Choice choice, int candidate, int criterion)
    {
        var error = choice.Table.IsMissing(candidate, criterion)
            ? ChoiceTable.MissingError
            : choice.Table.Candidates[candidate].Marks[criterion].Error;
        return error * error;
    }
}
