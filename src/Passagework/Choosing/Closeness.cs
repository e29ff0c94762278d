namespace Passagework.Choosing;

/// <summary>How clearly the leader leads, in words.</summary>
public static class Closeness
{
    /// <summary>Where the difference is smaller than its error.</summary>
    public const string NotClear = "no clear difference";

    /// <summary>
    /// From the share of weightings, within the teacher's order, in which the leader is ahead of the runner-up. The
    /// limits 0.9, 0.7 and 0.5 are chosen by us.
    /// </summary>
    public static string Words(double share) =>
        share switch
        {
            >= 0.9 => "clearly",
            >= 0.7 => "fairly clearly",
            >= 0.5 => "by a little",
            _ => "it depends on what you want",
        };
}
