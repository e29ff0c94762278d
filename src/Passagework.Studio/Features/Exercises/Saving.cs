using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Says in words why something could not be kept.</summary>
internal static class Saving
{
    private const int Full = 13;
    private const int Busy = 5;
    private const int ReadOnly = 8;

    /// <summary>Runs an action on the database; a failing disk becomes an answer.</summary>
    public static async Task<ChangeAnswer> Try(Func<Task<ChangeAnswer>> action)
    {
        ChangeAnswer? answer = null;
        return await Do(async () => answer = await action()) is { } fault
            ? new ChangeAnswer.Failed(fault)
            : answer!;
    }

    /// <summary>Runs an action that keeps something and has no answer of its own.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public static async Task<Fault?> Do(Func<Task> action)
    {
        try
        {
            await action();
            return null;
        }
        catch (DbUpdateException wrong) when (wrong.InnerException is SqliteException inner)
        {
            return FaultOf(inner);
        }
        catch (SqliteException wrong)
        {
            return FaultOf(wrong);
        }
    }

    /// <summary>What is wrong with the disk, and what would help.</summary>
    public static Fault FaultOf(SqliteException wrong) =>
        wrong.SqliteErrorCode switch
        {
            Full => new Fault(
                "the change is not kept: the disk is full",
                "the data folder",
                "free some space, then change it again"
            ),
            ReadOnly => new Fault(
                "the change is not kept: the file is read-only",
                "the data folder",
                "allow writing to it"
            ),
            Busy => new Fault(
                "the change is not kept: another program holds the database",
                "the data folder",
                "close it, then change it again"
            ),
            _ => new Fault(
                $"the change is not kept: {wrong.Message.TrimEnd('.')}",
                "the data folder",
                "a disk that can be written to"
            ),
        };
}
