using Microsoft.Extensions.DependencyInjection;
using Passagework.Studio.Data;
using Passagework.Studio.Features;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Tests.Features;

/// <summary>The features over a real database file of their own, without the web around them.</summary>
internal sealed class Room : IAsyncDisposable
{
    private readonly ServiceProvider _services;

    private Room(StudioOptions options, TimeProvider time)
    {
        Options = options;
        _services = new ServiceCollection()
            .AddLogging()
            .AddSingleton(options)
            .AddSingleton(time)
            .With(services => services.AddStudioData(options))
            .With(services => services.AddStudioFeatures())
            .BuildServiceProvider();
    }

    /// <summary>Where its file is.</summary>
    public StudioOptions Options { get; }

    /// <summary>A room with a new database.</summary>
    public static async Task<Room> Open(TimeProvider? time = null)
    {
        var options = new StudioOptions(Directory.CreateTempSubdirectory("room-").FullName, null, false);
        Assert.Null(await Database.Open(options, time ?? TimeProvider.System));
        return new Room(options, time ?? TimeProvider.System);
    }

    /// <summary>One of the features.</summary>
    public T Feature<T>()
        where T : notnull => _services.GetRequiredService<T>();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Options.DataFolder, recursive: true);
    }
}

/// <summary>Lets registrations that return nothing stand in a chain.</summary>
internal static class Registrations
{
    public static IServiceCollection With(this IServiceCollection services, Action<IServiceCollection> add)
    {
        add(services);
        return services;
    }
}
