namespace Passagework.Repertoire;

/// <summary>How alike two distributions are.</summary>
/// <remarks>
/// Sources: cosine and the Jensen–Shannon divergence in their usual form. Cosine is ruled by the commonest class, the divergence by
/// missing ones. All are null when one of the two is empty.
/// </remarks>
public static class Likeness
{
    /// <summary>Mass that both share, class by class: 0 nothing, 1 the same.</summary>
    public static double? Overlap<TClass>(Distribution<TClass> a, Distribution<TClass> b)
        where TClass : struct, IComparable<TClass> => Sum(a, b, static (p, q) => Math.Min(p, q));

    /// <summary>The cosine of the angle between the two: 0 nothing in common, 1 the same.</summary>
    public static double? Cosine<TClass>(Distribution<TClass> a, Distribution<TClass> b)
        where TClass : struct, IComparable<TClass> =>
        Sum(a, b, static (p, q) => p * q) / Math.Sqrt(Squares(a) * Squares(b));

    /// <summary>The Jensen–Shannon divergence in bits: 0 the same, 1 nothing in common.</summary>
    public static double? Divergence<TClass>(Distribution<TClass> a, Distribution<TClass> b)
        where TClass : struct, IComparable<TClass> =>
        Sum(a, b, static (p, q) => (Part(p, q) + Part(q, p)) / 2);

    private static double Part(double share, double other) =>
        share == 0 ? 0 : share * Math.Log2(share / ((share + other) / 2));

    private static double? Sum<TClass>(
        Distribution<TClass> a,
        Distribution<TClass> b,
        Func<double, double, double> term
    )
        where TClass : struct, IComparable<TClass>
    {
        if (a.IsEmpty || b.IsEmpty)
        {
            return null;
        }

        var sum = a.Classes.Sum(each => term(a.ShareOf(each), b.ShareOf(each)));
        return sum + b.Classes.Where(each => a.CountOf(each) == 0).Sum(each => term(0, b.ShareOf(each)));
    }

    private static double Squares<TClass>(Distribution<TClass> one)
        where TClass : struct, IComparable<TClass> =>
        one.Classes.Sum(each => one.ShareOf(each) * one.ShareOf(each));
}
