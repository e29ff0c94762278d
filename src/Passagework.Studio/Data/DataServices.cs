using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Data;

/// <summary>The database as the features get it: a new short-lived context for each action.</summary>
internal static class DataServices
{
    /// <summary>Registers the database and its daily copy.</summary>
    public static void AddStudioData(this IServiceCollection services, StudioOptions options)
    {
        services.AddDbContextFactory<LiteDb>(db => Database.Configure(db, options.DatabaseFile));
        services.AddSingleton<Store>();
        services.AddSingleton<DailyBackup>();
        services.AddHostedService(all => all.GetRequiredService<DailyBackup>());
    }
}

/// <summary>Opens the database for one action.</summary>
internal sealed class Store(IDbContextFactory<LiteDb> factory)
{
    /// <summary>A context of its own, to be disposed after the action.</summary>
    public async Task<StudioDb> Open(CancellationToken stop = default) =>
        await factory.CreateDbContextAsync(stop);
}
