namespace Passagework.Exercises.Ideas;

/// <summary>What the fingers are called.</summary>
public static class FingerNames
{
    /// <summary>A finger of the fretting hand, 1 to 4: first, second, third, little.</summary>
    public static string Of(int finger) =>
        finger switch
        {
            1 => "first",
            2 => "second",
            3 => "third",
            _ => "little",
        };
}
