using Passagework.Choosing.Discovery;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>A search while it goes on, and what it found.</summary>
public sealed class RunningSearch : IProgress<DiscoveryProgress>, IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly Lock _one = new();
    private DiscoveryProgress _progress;

    /// <summary>Begins when there is a place.</summary>
    internal RunningSearch(DiscoveryQuestion question, SemaphoreSlim places)
    {
        _progress = new DiscoveryProgress(0, question.Space.Total);
        Result = Task.Run(() => Search(question, places));
    }

    /// <summary>What came of it.</summary>
    public Task<Outcome<DiscoveryResult>> Result { get; }

    /// <summary>Whether it waits for others to end.</summary>
    public bool IsWaiting { get; private set; } = true;

    /// <summary>How far it is.</summary>
    public DiscoveryProgress Progress
    {
        get
        {
            lock (_one)
                return _progress;
        }
    }

    /// <summary>Ends it soon; what was found by then is its result.</summary>
    public void Stop() => _stop.Cancel();

    /// <inheritdoc/>
    public void Report(DiscoveryProgress value)
    {
        lock (_one)
        {
            if (value.Visited > _progress.Visited)
                _progress = value;
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        _ = Result.ContinueWith(_ => _stop.Dispose(), TaskScheduler.Default);
    }

    // Stopped while it waits, it still answers: with nothing.
    private async Task<Outcome<DiscoveryResult>> Search(DiscoveryQuestion question, SemaphoreSlim places)
    {
        var hasPlace = await HasPlace(places);
        try
        {
            IsWaiting = false;
            return Discoverer.Find(question, this, _stop.Token);
        }
        finally
        {
            if (hasPlace)
                places.Release();
        }
    }

    private async Task<bool> HasPlace(SemaphoreSlim places)
    {
        try
        {
            await places.WaitAsync(_stop.Token);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
