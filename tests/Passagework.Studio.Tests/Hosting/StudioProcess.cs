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

    // A file may not grow when the disk is taken for full; without the trap that would end the program.
    private const string Tolerant = "trap '' XFSZ; exec \"$0\" \"$@\"";

    private StudioProcess(string dataFolder, string urls)
    {
        DataFolder = dataFolder;
        _process = new Process
        {
            StartInfo = new ProcessStartInfo(
                "sh",
                ["-c", Tolerant, "dotnet", Program, "--data", dataFolder, "--no-browser", "--urls", urls]
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

    /// <summary>What it wrote on standard error, and on standard output after it had opened.</summary>
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
                await studio._process.StandardOutput.ReadLineAsync(stop.Token);
                _ = studio.Listen();
                return studio;
            }
        }

        await studio._process.WaitForExitAsync(stop.Token);
        var errors = studio.Errors;
        studio.Dispose();
        throw new InvalidOperationException($"The studio did not open: {errors}");
    }

    /// <summary>Runs it to its end, for a start that is refused.</summary>
    /// <returns>Exit code and what it wrote, standard error first.</returns>
    public static Task<(int Code, string Errors)> Run(params string[] arguments) =>
        Run(new ProcessStartInfo("dotnet", [Program, .. arguments]));

    /// <summary>Runs it to its end where no file can be longer than nothing.</summary>
    /// <returns>Exit code and what it wrote, standard error first.</returns>
    public static Task<(int Code, string Errors)> RunOnFullDisk(params string[] arguments)
    {
        var start = new ProcessStartInfo(
            "sh",
            ["-c", "ulimit -f 0; " + Tolerant, "dotnet", Program, .. arguments]
        );
        // The runtime would keep its code twice, in a file that is none.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return Run(start);
    }

    private static async Task<(int Code, string Errors)> Run(ProcessStartInfo start)
    {
        start.UseShellExecute = false;
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        using var process = Process.Start(start)!;
        using var stop = new CancellationTokenSource(Patience);
        var output = process.StandardOutput.ReadToEndAsync(stop.Token);
        var errors = await process.StandardError.ReadToEndAsync(stop.Token);
        errors += await output;
        await process.WaitForExitAsync(stop.Token);
        return (process.ExitCode, errors.Trim());
    }

    /// <summary>From now on no file of its grows, as on a full disk.</summary>
    public Task FillDisk() => Limit("1:unlimited");

    /// <summary>Files may grow again.</summary>
    public Task FreeDisk() => Limit("unlimited:unlimited");

    /// <summary>Ends it at once, as a power cut does.</summary>
    public void Kill()
    {
        _process.Kill();
        _process.WaitForExit();
    }

    private async Task Listen()
    {
        while (await _process.StandardOutput.ReadLineAsync() is { } line)
        {
            lock (_errors)
                _errors.AppendLine(line);
        }
    }

    private async Task Limit(string fileSize)
    {
        using var limit = Process.Start("prlimit", [$"--pid={_process.Id}", $"--fsize={fileSize}"]);
        await limit.WaitForExitAsync();
        if (limit.ExitCode != 0)
            throw new InvalidOperationException("prlimit could not change the studio's limits");
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_process.HasExited)
            Kill();
        _process.Dispose();
    }
}
