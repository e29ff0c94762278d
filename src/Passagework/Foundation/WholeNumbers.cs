namespace Passagework.Foundation;

/// <summary>Divisors, multiples and remainders of whole numbers.</summary>
public static class WholeNumbers
{
    /// <summary>Greatest common divisor of two numbers not below 0; gcd(a, 0) = a, and gcd(0, 0) = 0.</summary>
    public static long Gcd(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    /// <summary>Least common multiple of two numbers above 0.</summary>
    public static long Lcm(long a, long b) => a / Gcd(a, b) * b;

    /// <summary>The remainder in [0, <paramref name="modulus"/>), also for negative numbers.</summary>
    public static int Modulo(int value, int modulus)
    {
        var rest = value % modulus;
        return rest < 0 ? rest + modulus : rest;
    }
}
