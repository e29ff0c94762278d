using System.Diagnostics;
using System.Text.Json;

namespace Passagework.Tests.Outside;

/// <summary>What the npm package named in <c>Outside/npm/package.json</c> says, asked once through node.</summary>
internal static class TheoryLibrary
{
    private static readonly Lazy<JsonDocument> Answer = new(Ask);

    /// <summary>All that it says.</summary>
    public static JsonElement Said => Answer.Value.RootElement;

    private static JsonDocument Ask()
    {
        var folder = Path.Combine(RepositoryFolder(), "tests", "Passagework.Tests", "Outside", "npm");
        if (!Directory.Exists(Path.Combine(folder, "node_modules", "tonal")))
        {
            throw new InvalidOperationException(
                "The outside theory library is missing: run `npm ci --ignore-scripts` in tests/Passagework.Tests/Outside/npm."
            );
        }

        var start = new ProcessStartInfo("node", ["theory.mjs"])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var node = Start(start) ?? throw new InvalidOperationException("node did not start.");
        var complaint = node.StandardError.ReadToEndAsync();
        var said = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        return node.ExitCode == 0
            ? JsonDocument.Parse(said)
            : throw new InvalidOperationException($"node theory.mjs failed: {complaint.Result}");
    }

    private static Process? Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start);
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException("node is missing: install Node.js 18 or later.", missing);
        }
    }

    private static string RepositoryFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Passagework.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new InvalidOperationException("Run the tests from inside the repository.");
    }
}
