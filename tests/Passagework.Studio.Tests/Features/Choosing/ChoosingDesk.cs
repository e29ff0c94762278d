using Microsoft.Extensions.DependencyInjection;
using Passagework.Studio.Data;
using Passagework.Studio.Features;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Tests.Features.Choosing;

/// <summary>The features over a real database file of their own.</summary>
internal sealed class ChoosingDesk : IAsyncDisposable
{
    private readonly ServiceProvider _services;

    private ChoosingDesk(ServiceProvider services) => _services = services;

    /// <summary>Makes the file.</summary>
    public static async Task<ChoosingDesk> Open()
    {
        var options = new StudioOptions(Directory.CreateTempSubdirectory("studio-").FullName, null, false);
        Assert.Null(await Database.Open(options, TimeProvider.System));
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddSingleton(options);
        services.AddSingleton(TimeProvider.System);
        services.AddStudioData(options);
        services.AddStudioFeatures();
        return new ChoosingDesk(services.BuildServiceProvider());
    }

    /// <summary>A feature.</summary>
    public T Get<T>()
        where T : notnull => _services.GetRequiredService<T>();

    /// <summary>Puts rows into the database.</summary>
    public async Task Add(params object[] rows)
    {
        await using var db = await Get<Store>().Open(TestContext.Current.CancellationToken);
        db.AddRange(rows);
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Measures and weighs a question.</summary>
    public async Task<Weighed> Weigh(Asked asked) => (await Measure(asked)).Weigh(asked).OrThrow();

    /// <summary>Measures a question.</summary>
    public async Task<Weighing> Measure(Asked asked) =>
        (await Get<WeighExercises>().Measure(asked, TestContext.Current.CancellationToken)).OrThrow();

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await _services.DisposeAsync();
}
