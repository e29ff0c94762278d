namespace Passagework.Tests.Engraving;

/// <summary>Pictures that were looked at and found good; they lie in <c>Engraving/Golden</c>.</summary>
internal static class GoldenPicture
{
    private static readonly Architecture.GoldenFile Accepted = new(
        "tests",
        "Passagework.Tests",
        "Engraving",
        "Golden"
    );

    /// <summary>Holds when the picture is the same.</summary>
    public static void Holds(string name, string actual) => Accepted.Holds(name, actual);
}
