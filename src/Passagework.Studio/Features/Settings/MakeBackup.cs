using Microsoft.Data.Sqlite;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Features.Settings;

/// <summary>Takes a copy of the database when it is asked for, and tells of the last one.</summary>
internal sealed class MakeBackup(StudioOptions options, TimeProvider time, DailyBackup daily)
{
    /// <summary>The newest copy; null when there is none.</summary>
    public FileInfo? Newest() => Backup.Newest(options);

    /// <summary>Why the day has no copy yet; null when nothing went wrong.</summary>
    public Fault? DailyFault => daily.Failed;

    /// <summary>Takes the copy of the day, in place of an earlier one of the same day.</summary>
    /// <returns>Why it could not be taken; null when it was.</returns>
    public Fault? Make()
    {
        try
        {
            Backup.Make(options, time);
            return null;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or SqliteException)
        {
            return Backup.FaultOf(options, wrong);
        }
    }
}
