using System.Diagnostics;
using Passagework.Choosing.Discovery;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli;

/// <summary>Watches a search: time, progress on standard error where that is a terminal, and Ctrl-C, which stops it.</summary>
internal sealed class SearchWatch : IProgress<DiscoveryProgress>, IDisposable
{
    private const double Quiet = 1;
    private const double Pause = 0.25;
    private readonly Stopwatch _watch = Stopwatch.StartNew();
    private readonly CancellationTokenSource _stop = new();
    private readonly TextWriter? _told;
    private readonly Lock _one = new();
    private double _last = Quiet - Pause;

    /// <summary>Starts the clock.</summary>
    /// <param name="told">Where progress is told; null for nowhere.</param>
    public SearchWatch(TextWriter? told)
    {
        _told = told;
        Console.CancelKeyPress += Stop;
    }

    /// <summary>Cancelled by Ctrl-C.</summary>
    public CancellationToken Stopped => _stop.Token;

    /// <summary>Since the beginning.</summary>
    public double Seconds => _watch.Elapsed.TotalSeconds;

    public void Report(DiscoveryProgress value)
    {
        lock (_one)
        {
            if (_told is null || Seconds < _last + Pause)
            {
                return;
            }

            _last = Seconds;
            _told.Write($"\r{Line(value, Seconds)}");
            _told.Flush();
        }
    }

    public void Dispose()
    {
        Console.CancelKeyPress -= Stop;
        if (_told is not null && _last >= Quiet)
        {
            _told.WriteLine();
        }

        _stop.Dispose();
    }

    /// <summary>How far the search is, how fast it goes and how long it will take.</summary>
    internal static string Line(DiscoveryProgress progress, double seconds)
    {
        var rate = progress.Visited / seconds;
        return Text(
            $"{progress.Visited:N0} of {progress.Total:N0} looked at, {rate:N0} a second, {(progress.Total - progress.Visited) / rate:N0} s left; Ctrl-C shows what is found "
        );
    }

    private void Stop(object? sender, ConsoleCancelEventArgs pressed)
    {
        pressed.Cancel = true;
        _stop.Cancel();
    }
}
