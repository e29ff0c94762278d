using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features;

/// <summary>Says in words why something could not be kept.</summary>
internal static class Saving
{
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

    private static Fault FaultOf(SqliteException wrong) =>
        DiskFault.Of(wrong, "the change is not kept", "the data folder");
}
