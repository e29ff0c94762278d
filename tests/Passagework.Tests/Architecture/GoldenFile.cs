namespace Passagework.Tests.Architecture;

/// <summary>Files that were looked at and found good.</summary>
/// <param name="folder">Where they lie, from the root of the repository.</param>
internal sealed class GoldenFile(params string[] folder)
{
    /// <summary>Holds when the file says the same; else the new one is put under <c>artifacts</c> to be looked at.</summary>
    public void Holds(string name, string actual)
    {
        var accepted = Path.Combine([Repository.Root, .. folder, name]);
        var expected = File.Exists(accepted) ? File.ReadAllText(accepted) : "";
        if (actual == expected)
        {
            return;
        }

        var proposed = Path.Combine([Repository.Root, "artifacts", "golden", .. folder.TakeLast(1), name]);
        Directory.CreateDirectory(Path.GetDirectoryName(proposed)!);
        File.WriteAllText(proposed, actual);
        Assert.Fail($"{name} has changed. Look at {proposed}; when it is right, copy it to {accepted}.");
    }
}
