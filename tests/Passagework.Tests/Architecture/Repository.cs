namespace Passagework.Tests.Architecture;

/// <summary>The source tree that these tests were built from.</summary>
internal static class Repository
{
    /// <summary>The folder of the solution file, found upwards from the test assembly.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Every C# file of the source tree, as paths from the root.</summary>
    public static IEnumerable<string> SourceFiles() =>
        new[] { "src", "tests", "bench" }
            .SelectMany(folder =>
                Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            )
            .Select(file => Path.GetRelativePath(Root, file))
            .Order(StringComparer.Ordinal);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Passagework.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new InvalidOperationException("No Passagework.slnx above the test assembly.");
    }
}
