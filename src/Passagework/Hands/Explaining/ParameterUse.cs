using System.Collections.Immutable;

namespace Passagework.Hands.Explaining;

/// <summary>How much of a move's time one number of the player gives, and how well that number is known.</summary>
/// <param name="Parameter">The number.</param>
/// <param name="Ms">Its part of the time.</param>
public sealed record ParameterUse(Parameter Parameter, double Ms)
{
    /// <summary>Such as <c>roll: same finger tilts to the next string, 215 ms, assumed</c>.</summary>
    public string Words =>
        System.FormattableString.Invariant($"{Parameter.Meaning}, {Ms:0} ms, {MarkWords(Parameter.Mark)}");

    /// <summary>How well a number is known, in words.</summary>
    public static string MarkWords(Provenance mark) =>
        mark switch
        {
            Provenance.Published => "published",
            Provenance.Derived => "worked out from published figures",
            Provenance.CommonPractice => "common practice",
            _ => "assumed",
        };

    /// <summary>The numbers that make up a demand, the largest part first.</summary>
    internal static ImmutableArray<ParameterUse> Of(Demand demand, double[] basis) =>
        [
            .. demand
                .AllTerms()
                .GroupBy(term => Basis.ParameterOf(term.Entry))
                .Select(same => new ParameterUse(
                    same.Key,
                    same.Sum(term => term.Coefficient * basis[term.Entry])
                ))
                .OrderByDescending(use => use.Ms),
        ];
}
