using System.Globalization;

namespace Passagework.Theory;

/// <summary>A frequency.</summary>
/// <remarks>The default value is 0 Hz, silence.</remarks>
public readonly record struct Hertz
{
    private Hertz(double value) => Value = value;

    /// <summary>Cycles per second, not negative, finite.</summary>
    public double Value { get; }

    /// <summary>That many cycles per second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, infinite or not a number.</exception>
    public static Hertz Of(double value)
    {
        if (!double.IsFinite(value) || value < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Finite and not negative.");
        }

        return new Hertz(value);
    }

    /// <summary>Such as <c>82.41 Hz</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:0.##} Hz");
}
