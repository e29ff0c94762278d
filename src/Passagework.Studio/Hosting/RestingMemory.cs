namespace Passagework.Studio.Hosting;

/// <summary>
/// Gives memory back to the machine once nobody works: the collector alone waits for the next work, which on a laptop may
/// come hours later.
/// </summary>
internal sealed class RestingMemory(TimeProvider time) : BackgroundService
{
    // Chosen by trial: an open page that nobody touches takes a few kB in that time, a change of an exercise megabytes.
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(10);
    private const long StillBytes = 500_000;
    private const long WorthBytes = 10_000_000;

    /// <summary>Whether there is rest, and something to give back.</summary>
    /// <param name="allocated">Bytes taken since the last look.</param>
    /// <param name="sinceCollected">Bytes taken since memory was last given back.</param>
    public static bool IsTime(long allocated, long sinceCollected) =>
        allocated < StillBytes && sinceCollected > WorthBytes;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            await LookNowAndThen(stoppingToken);
        }
        catch (OperationCanceledException)
        {
            // The studio closes.
        }
    }

    private async Task LookNowAndThen(CancellationToken stop)
    {
        var (seen, collected) = (0L, 0L);
        using var timer = new PeriodicTimer(Look, time);
        while (await timer.WaitForNextTickAsync(stop))
        {
            var now = GC.GetTotalAllocatedBytes();
            if (IsTime(now - seen, now - collected))
            {
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
                collected = now;
            }

            seen = now;
        }
    }
}
