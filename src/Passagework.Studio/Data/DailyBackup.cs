using Microsoft.Data.Sqlite;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Data;

/// <summary>Takes a copy of the database once a day while the studio is open.</summary>
internal sealed partial class DailyBackup(StudioOptions options, TimeProvider time, ILogger<DailyBackup> log)
    : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromHours(1);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The first page comes first.
        await Task.Yield();
        using var timer = new PeriodicTimer(Between, time);
        do
        {
            TakeOne();
        } while (await timer.WaitForNextTickAsync(stoppingToken).ConfigureAwait(false));
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
            CopyFailed(log, options.BackupFolder, wrong.Message);
        }
    }

    [LoggerMessage(
        Level = LogLevel.Error,
        Message = "No copy of the database could be put in {Folder}: {Reason}"
    )]
    private static partial void CopyFailed(ILogger log, string folder, string reason);
}
