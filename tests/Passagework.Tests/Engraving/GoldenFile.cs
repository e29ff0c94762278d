using Passagework.Tests.Architecture;

namespace Passagework.Tests.Engraving;

/// <summary>Pictures that were looked at and found good; they lie in <c>Engraving/Golden</c>.</summary>
internal static class GoldenFile
{
    private static readonly string Accepted = Path.Combine(
        Repository.Root,
        "tests",
        "Passagework.Tests",
        "Engraving",
        "Golden"
    );

    /// <summary>Holds when the file says the same; else the new one is put under <c>artifacts</c> to be looked at.</summary>
    public static void Holds(string name, string actual)
    {
        var accepted = Path.Combine(Accepted, name);
        var expected = File.Exists(accepted) ? File.ReadAllText(accepted) : "";
        if (actual == expected)
        {
            return;
        }

        var proposed = Path.Combine(Repository.Root, "artifacts", "golden", name);
        Directory.CreateDirectory(Path.GetDirectoryName(proposed)!);
        File.WriteAllText(proposed, actual);
        Assert.Fail($"{name} has changed. Look at {proposed}; when it is right, copy it to {accepted}.");
    }
}
