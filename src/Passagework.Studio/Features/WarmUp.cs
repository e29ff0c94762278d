using Microsoft.Data.Sqlite;
using Passagework.Studio.Features.Pieces;
using Passagework.Studio.Features.Shelf;

namespace Passagework.Studio.Features;

/// <summary>Measures shelf and pieces once while nobody waits, so that their pages come at once.</summary>
internal sealed class WarmUp(
    ListShelf shelf,
    ListPieces pieces,
    IHostApplicationLifetime host,
    TimeProvider time
) : BackgroundService
{
    // The first page comes first.
    private static readonly TimeSpan After = TimeSpan.FromSeconds(2);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        var started = new TaskCompletionSource();
        await using var _ = host.ApplicationStarted.Register(started.SetResult);
        try
        {
            await started.Task.WaitAsync(stoppingToken);
            await Task.Delay(After, time, stoppingToken);
            await shelf.List(new ShelfWords(), stoppingToken);
            await pieces.List(stoppingToken);
        }
        catch (OperationCanceledException)
        {
            // Closed before it was warm, or never open.
        }
        catch (SqliteException)
        {
            // The pages read for themselves, and say what is wrong.
        }
    }
}
