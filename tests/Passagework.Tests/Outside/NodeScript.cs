using System.Diagnostics;
using System.Text.Json;

namespace Passagework.Tests.Outside;

/// <summary>Runs a script of <c>Outside/npm</c> through node and takes its answer.</summary>
internal static class NodeScript
{
    /// <summary>The folder of the scripts and of the packages that they use.</summary>
    public static string Folder { get; } =
        Path.Combine(Architecture.Repository.Root, "tests", "Passagework.Tests", "Outside", "npm");

    /// <summary>What the script prints, given text on its standard input.</summary>
    /// <param name="script">Its file name.</param>
    /// <param name="package">The npm package that it asks.</param>
    /// <param name="input">Standard input.</param>
    public static JsonDocument Ask(string script, string package, string input = "")
    {
        if (!Directory.Exists(Path.Combine(Folder, "node_modules", package)))
        {
            throw new InvalidOperationException(
                $"The npm package {package} is missing: run `npm ci --ignore-scripts` in tests/Passagework.Tests/Outside/npm."
            );
        }

        var start = new ProcessStartInfo("node", [script])
        {
            WorkingDirectory = Folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var node = Start(start) ?? throw new InvalidOperationException("node did not start.");
        var said = node.StandardOutput.ReadToEndAsync();
        var complaint = node.StandardError.ReadToEndAsync();
        node.StandardInput.Write(input);
        node.StandardInput.Close();
        node.WaitForExit();
        return node.ExitCode == 0
            ? JsonDocument.Parse(said.Result)
            : throw new InvalidOperationException($"node {script} failed: {complaint.Result}");
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
}
