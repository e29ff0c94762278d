namespace Passagework.Choosing;

/// <summary>The standard normal distribution.</summary>
internal static class NormalDistribution
{
    // Beyond this the tail is below what a double tells from 1.
    private const double Far = 8.5;

    /// <summary>The share below z.</summary>
    /// <remarks>
    /// 1/2 + φ(z)(z + z³/3 + z⁵/(3·5) + …) (G. Marsaglia, "Evaluating the normal distribution", Journal of Statistical
    /// Software 11(4), 2004).
    /// </remarks>
    public static double Below(double z)
    {
        if (Math.Abs(z) > Far)
        {
            return z > 0 ? 1 : 0;
        }

        var (sum, before, term) = (z, 0.0, z);
        for (var odd = 3; sum != before; odd += 2)
        {
            before = sum;
            term *= z * z / odd;
            sum += term;
        }

        return 0.5 + (sum * Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI));
    }
}
