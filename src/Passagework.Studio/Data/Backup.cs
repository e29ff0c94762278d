using System.Globalization;
using Microsoft.Data.Sqlite;
using Passagework.Foundation;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Data;

/// <summary>Copies of the database, taken while it is in use.</summary>
internal static class Backup
{
    /// <summary>How long copies of the day are kept.</summary>
    public const int KeptDays = 14;

    private const string DayFormat = "yyyy-MM-dd";

    /// <summary>Takes a copy named after the day and what it is for; a copy of that name is replaced when it is whole.</summary>
    /// <returns>The file.</returns>
    public static string Make(StudioOptions options, TimeProvider time, string name = "studio")
    {
        Directory.CreateDirectory(options.BackupFolder);
        var day = time.GetLocalNow().ToString(DayFormat, CultureInfo.InvariantCulture);
        var file = Path.Combine(options.BackupFolder, $"{day}-{name}.db");
        var unfinished = file + ".part";
        try
        {
            File.Delete(unfinished);
            Copy(options, unfinished);
            File.Move(unfinished, file, overwrite: true);
            return file;
        }
        catch
        {
            // Half a copy would take the room that is missing.
            File.Delete(unfinished);
            File.Delete(unfinished + "-journal");
            throw;
        }
    }

    private static void Copy(StudioOptions options, string file)
    {
        using var from = new SqliteConnection(
            Database.ConnectionTo(options.DatabaseFile, SqliteOpenMode.ReadWrite)
        );
        using var to = new SqliteConnection($"Data Source={file};Pooling=False");
        from.Open();
        to.Open();
        from.BackupDatabase(to);
    }

    /// <summary>Why no copy could be taken, in words.</summary>
    /// <param name="options">Where it should have been put.</param>
    /// <param name="wrong">What <see cref="Make"/> threw.</param>
    public static Fault FaultOf(StudioOptions options, Exception wrong) =>
        wrong is SqliteException refused
            ? DiskFault.Of(refused, "no copy could be taken", options.BackupFolder)
            : new Fault(
                $"no copy could be taken: {wrong.Message.TrimEnd('.')}",
                options.BackupFolder,
                "a folder that can be written to, with room for the copy"
            );

    /// <summary>The newest copy and when it was taken; null when there is none.</summary>
    public static FileInfo? Newest(StudioOptions options) =>
        Directory.Exists(options.BackupFolder)
            ? new DirectoryInfo(options.BackupFolder)
                .EnumerateFiles("*.db")
                .OrderByDescending(file => file.LastWriteTimeUtc)
                .FirstOrDefault()
            : null;

    /// <summary>Whether the day already has its copy.</summary>
    public static bool IsMade(StudioOptions options, TimeProvider time) =>
        File.Exists(
            Path.Combine(
                options.BackupFolder,
                $"{time.GetLocalNow().ToString(DayFormat, CultureInfo.InvariantCulture)}-studio.db"
            )
        );

    /// <summary>Removes copies of days that are longer ago than they are kept.</summary>
    public static void RemoveOld(StudioOptions options, TimeProvider time)
    {
        var oldest = time.GetLocalNow().Date.AddDays(-KeptDays);
        foreach (var file in Directory.EnumerateFiles(options.BackupFolder, "*.db"))
        {
            var name = Path.GetFileName(file);
            if (
                name.Length > DayFormat.Length
                && DateTime.TryParseExact(
                    name[..DayFormat.Length],
                    DayFormat,
                    CultureInfo.InvariantCulture,
                    DateTimeStyles.None,
                    out var day
                )
                && day < oldest
            )
            {
                File.Delete(file);
            }
        }
    }
}
