using Microsoft.Data.Sqlite;
using Passagework.Foundation;

namespace Passagework.Studio.Data;

/// <summary>What is wrong with the disk that holds the data, and what would help.</summary>
internal static class DiskFault
{
    private const int Busy = 5;
    private const int ReadOnly = 8;
    private const int BrokenWrite = 10;
    private const int Full = 13;

    // Above the lowest byte stands what exactly went wrong.
    private const int Kind = 0xFF;

    /// <summary>Whether a refusal of the database is the disk's doing, and not the file's.</summary>
    public static bool Is(SqliteException wrong) => (wrong.SqliteErrorCode & Kind) is BrokenWrite or Full;

    /// <summary>The fault in words.</summary>
    /// <param name="wrong">What the database said.</param>
    /// <param name="what">What came to nothing, such as "the change is not kept".</param>
    /// <param name="where">The folder or file.</param>
    public static Fault Of(SqliteException wrong, string what, string where) =>
        (wrong.SqliteErrorCode & Kind) switch
        {
            Full => new Fault($"{what}: the disk is full", where, "free some space, then try again"),
            BrokenWrite => new Fault(
                $"{what}: the disk takes no more, or cannot be read",
                where,
                "free some space, or have the disk looked after, then try again"
            ),
            ReadOnly => new Fault($"{what}: the file is read-only", where, "allow writing to it"),
            Busy => new Fault(
                $"{what}: another program holds the database",
                where,
                "close it, then try again"
            ),
            _ => new Fault(
                $"{what}: {wrong.Message.TrimEnd('.')}",
                where,
                "a folder on a disk that can be written to"
            ),
        };
}
