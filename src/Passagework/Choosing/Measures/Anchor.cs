namespace Passagework.Choosing.Measures;

/// <summary>Between which raw values a criterion counts: 0 at and below the one, 1 at and above the other, linear between; a teacher's may run downwards.</summary>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="Zero">Raw value that counts 0.</param>
/// <param name="One">Raw value that counts 1.</param>
/// <param name="How">How the two were got.</param>
/// <param name="Cells">Of which cells.</param>
/// <param name="IsExact">Over all of these cells, not a sample.</param>
public sealed record Anchor(string Criterion, double Zero, double One, string How, string Cells, bool IsExact)
{
    /// <summary>The value of a raw measure, 0 to 1.</summary>
    public double ValueOf(double raw) => Math.Clamp((raw - Zero) / (One - Zero), 0, 1);

    /// <summary>An error of the raw measure in units of the value.</summary>
    public double ErrorOf(double raw) => raw / (One - Zero);

    /// <summary>As a teacher sets it; downwards where less is better.</summary>
    public static Anchor Own(string criterion, double zero, double one) =>
        new(criterion, zero, one, "set by the teacher", "none", IsExact: true);
}
