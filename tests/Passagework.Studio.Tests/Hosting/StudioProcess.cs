using System.Diagnostics;
using System.Text;

namespace Passagework.Studio.Tests.Hosting;

/// <summary>The studio as a user starts it: a process of its own, with a data folder of its own.</summary>
internal sealed class StudioProcess : IDisposable
{
    private const string Opened = "The studio is open at ";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly StringBuilder _errors = new();
    private readonly Process _process;

    private StudioProcess(string dataFolder, string urls)
    {
        DataFolder = dataFolder;
        _process = new Process
        {
            StartInfo = new ProcessStartInfo(
                "dotnet",
                [Program, "--data", dataFolder, "--no-browser", "--urls", urls]
            )
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            },
        };
        // It is stopped before counting what runs often would pay.
        _process.StartInfo.Environment["DOTNET_TieredPGO"] = "0";
        _process.ErrorDataReceived += (_, line) =>
        {
            lock (_errors)
                _errors.AppendLine(line.Data);
        };
    }

    /// <summary>The built program.</summary>
    public static string Program => typeof(Studio.Hosting.StudioOptions).Assembly.Location;

    /// <summary>Where it keeps its data.</summary>
    public string DataFolder { get; }

    /// <summary>Its address, without a slash at the end.</summary>
    public string Url { get; private set; } = "";

    /// <summary>What it wrote on standard error.</summary>
    public string Errors
    {
        get
        {
            lock (_errors)
                return _errors.ToString().Trim();
        }
    }

    /// <summary>Bytes of memory that are its own.</summary>
    public long WorkingSet
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64;
        }
    }

    /// <summary>Starts it and waits until it says its address.</summary>
    /// <param name="dataFolder">Its data; a new folder when null.</param>
    /// <param name="urls">Where it listens; a free port when null.</param>
    public static async Task<StudioProcess> Start(string? dataFolder = null, string? urls = null)
    {
        var studio = new StudioProcess(
            dataFolder ?? Directory.CreateTempSubdirectory("studio-").FullName,
            urls ?? "http://127.0.0.1:0"
        );
        studio._process.Start();
        studio._process.BeginErrorReadLine();
        using var stop = new CancellationTokenSource(Patience);
        while (await studio._process.StandardOutput.ReadLineAsync(stop.Token) is { } line)
        {
            if (line.StartsWith(Opened, StringComparison.Ordinal))
            {
                studio.Url = line[Opened.Length..].Trim();
                return studio;
            }
        }

        await studio._process.WaitForExitAsync(stop.Token);
        var errors = studio.Errors;
        studio.Dispose();
        throw new InvalidOperationException($"The studio did not open: {errors}");
    }

    /// <summary>Runs it to its end, for a start that is refused.</summary>
    /// <returns>Exit code and what stands on standard error.</returns>
    public static async Task<(int Code, string Errors)> Run(params string[] arguments)
    {
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", [Program, .. arguments])
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
        using var stop = new CancellationTokenSource(Patience);
        var output = process.StandardOutput.ReadToEndAsync(stop.Token);
        var errors = await process.StandardError.ReadToEndAsync(stop.Token);
        await output;
        await process.WaitForExitAsync(stop.Token);
        return (process.ExitCode, errors.Trim());
    }

    /// <summary>Ends it at once, as a power cut does.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
    }
}
