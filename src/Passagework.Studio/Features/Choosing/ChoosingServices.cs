namespace Passagework.Studio.Features.Choosing;

/// <summary>What a teacher can do on the Choose page.</summary>
internal static class ChoosingServices
{
    /// <summary>Registers the features of choosing.</summary>
    public static void AddChoosing(this IServiceCollection services)
    {
        services.AddSingleton<GatherExercises>();
        services.AddSingleton<GatherMusic>();
        services.AddSingleton<WeighExercises>();
        services.AddSingleton<KeepQuestion>();
        services.AddSingleton<KeepDecision>();
        services.AddSingleton<ListDecisions>();
        services.AddSingleton<ThrowAwayDecision>();
        services.AddSingleton<SearchShelf>();
        services.AddSingleton<FindNewExercises>();
        services.AddSingleton<KeepFinds>();
        services.AddSingleton<OpenFind>();
        services.AddTransient(all => new Deliberation(
            all.GetRequiredService<WeighExercises>(),
            all.GetRequiredService<KeepQuestion>(),
            all.GetRequiredService<ListDecisions>(),
            all.GetRequiredService<TimeProvider>()
        ));
    }
}
