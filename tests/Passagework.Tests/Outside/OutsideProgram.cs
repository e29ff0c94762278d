using System.ComponentModel;
using System.Diagnostics;

namespace Passagework.Tests.Outside;

/// <summary>Runs a program of <c>packages.debian</c>.</summary>
internal static class OutsideProgram
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    /// <summary>What the program writes to its standard output.</summary>
    /// <param name="program">Its name.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="environment">Variables set for it besides our own.</param>
    public static string Run(
        string program,
        IEnumerable<string> arguments,
        params (string Name, string Value)[] environment
    )
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;

        using var process = Start(start);
        var said = process.StandardOutput.ReadToEndAsync();
        var complaint = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Longest))
        {
            process.Kill(entireProcessTree: true);
            throw new InvalidOperationException($"{program} did not end within {Longest}.");
        }

        return process.ExitCode == 0
            ? said.Result
            : throw new InvalidOperationException($"{program} failed: {complaint.Result}");
    }

    private static Process Start(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException(
                $"The program {start.FileName} is missing; ./check installs it on Debian.",
                missing
            );
        }
    }
}
