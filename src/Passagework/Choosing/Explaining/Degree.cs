namespace Passagework.Choosing.Explaining;

/// <summary>A value from 0 to 1 in a word. The limits 0.3 and 0.7 are chosen by us.</summary>
public static class Degree
{
    /// <summary>Such as <c>middling</c>; the ends are the anchors; null was not measured.</summary>
    public static string Words(double? value) =>
        value switch
        {
            null => "not measured",
            >= 1 => "very high, as in the best tenth",
            >= 0.7 => "high",
            >= 0.3 => "middling",
            > 0 => "low",
            _ => "very low, as in the lowest tenth",
        };
}
