using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Data;

/// <summary>The database file: opened, looked at, brought up to date.</summary>
internal static class Database
{
    private const int BusySeconds = 10;

    /// <summary>Tells a context which file to use.</summary>
    public static void Configure(DbContextOptionsBuilder db, string file) =>
        db.UseSqlite(ConnectionTo(file, SqliteOpenMode.ReadWriteCreate));

    /// <summary>
    /// Makes the file when it is missing and brings it up to date when it is older, after a copy. A file that is damaged,
    /// newer, or no database of the studio's is left as it is.
    /// </summary>
    /// <returns>Why it cannot be used, with the way out; null when it can.</returns>
    public static async Task<Fault?> Open(StudioOptions options, TimeProvider time)
    {
        try
        {
            Directory.CreateDirectory(options.DataFolder);
            if (File.Exists(options.DatabaseFile) && await Unusable(options) is { } fault)
            {
                return fault;
            }

            await Migrate(options, time);
            return null;
        }
        catch (SqliteException wrong) when (DiskFault.Is(wrong))
        {
            return DiskFault.Of(wrong, "the data cannot be opened", options.DataFolder);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or SqliteException)
        {
            return new Fault(
                $"the data folder cannot be used: {wrong.Message.TrimEnd('.')}",
                options.DataFolder,
                "a folder that can be written to, given with --data"
            );
        }
    }

    /// <summary>A connection string; the file stays closed when nobody uses it.</summary>
    public static string ConnectionTo(string file, SqliteOpenMode mode) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mode,
            DefaultTimeout = BusySeconds,
            Pooling = mode == SqliteOpenMode.ReadWriteCreate,
        }.ToString();

    private static async Task Migrate(StudioOptions options, TimeProvider time)
    {
        await using var db = Context(options);
        var isNew = !File.Exists(options.DatabaseFile);
        var isOld = (await db.Database.GetPendingMigrationsAsync()).Any();
        if (isOld && !isNew)
            Backup.Make(options, time, "before-update");

        if (isOld)
            await db.Database.MigrateAsync();

        await db.Database.ExecuteSqlRawAsync("pragma journal_mode=wal");
    }

    private static LiteDb Context(StudioOptions options)
    {
        var builder = new DbContextOptionsBuilder<LiteDb>();
        Configure(builder, options.DatabaseFile);
        return new LiteDb(builder.Options);
    }

    // Read-only, so that a file which is not ours stays as it is to the last byte.
    private static async Task<Fault?> Unusable(StudioOptions options)
    {
        var wayOut =
            $"move it away, or put back a copy from {options.BackupFolder} under its name; the file was not changed";
        try
        {
            await using var connection = new SqliteConnection(
                ConnectionTo(options.DatabaseFile, SqliteOpenMode.ReadOnly)
            );
            await connection.OpenAsync();
            if (await Text(connection, "pragma quick_check(1)") is not "ok")
            {
                return new Fault("the database is damaged", options.DatabaseFile, wayOut);
            }

            return await Foreign(connection, options);
        }
        catch (SqliteException wrong) when (wrong.SqliteErrorCode is 11 or 26)
        {
            return new Fault("the file is no database, or damaged", options.DatabaseFile, wayOut);
        }
    }

    private static async Task<Fault?> Foreign(SqliteConnection connection, StudioOptions options)
    {
        var tables = await Text(connection, "select count(*) from sqlite_master");
        if (tables == "0")
        {
            return null;
        }

        var history = await Text(
            connection,
            "select count(*) from sqlite_master where name = '__EFMigrationsHistory'"
        );
        if (history == "0")
        {
            return new Fault(
                "the file is a database of another program",
                options.DatabaseFile,
                "another folder, given with --data; the file was not changed"
            );
        }

        await using var db = Context(options);
        var known = db.Database.GetMigrations().ToHashSet();
        var newest = await Text(connection, "select max(MigrationId) from __EFMigrationsHistory");
        return newest.Length == 0 || known.Contains(newest)
            ? null
            : new Fault(
                "the database was written by a newer version of the studio",
                options.DatabaseFile,
                $"that version or a later one, or a copy of before from {options.BackupFolder}; the file was not changed"
            );
    }

    private static async Task<string> Text(SqliteConnection connection, string query)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = query;
        return Convert.ToString(
                await command.ExecuteScalarAsync(),
                System.Globalization.CultureInfo.InvariantCulture
            ) ?? "";
    }
}
