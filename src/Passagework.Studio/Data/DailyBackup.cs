using Microsoft.Data.Sqlite;
using Passagework.Foundation;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Data;

/// <summary>Takes a copy of the database once a day while the studio is open.</summary>
internal sealed partial class DailyBackup(StudioOptions options, TimeProvider time, ILogger<DailyBackup> log)
    : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromHours(1);
    private Fault? _failed;

    /// <summary>Why the day has no copy yet; null when it has one, or none was tried.</summary>
    public Fault? Failed => Backup.IsMade(options, time) ? null : _failed;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The first page comes first.
        await Task.Yield();
        using var timer = new PeriodicTimer(Between, time);
        try
        {
            do
            {
                TakeOne();
            } while (await timer.WaitForNextTickAsync(stoppingToken).ConfigureAwait(false));
        }
        catch (OperationCanceledException)
        {
            // Closed, or never open.
        }
    }

    private void TakeOne()
    {
        try
        {
            if (Backup.IsMade(options, time))
            {
                return;
            }

            Backup.Make(options, time);
            Backup.RemoveOld(options, time);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or SqliteException)
        {
            _failed = Backup.FaultOf(options, wrong);
            CopyFailed(log, _failed);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "{Fault}. It is tried again every hour.")]
    private static partial void CopyFailed(ILogger log, Fault fault);
}
