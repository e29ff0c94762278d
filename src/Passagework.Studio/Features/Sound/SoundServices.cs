namespace Passagework.Studio.Features.Sound;

/// <summary>Registers what is needed to hear exercises.</summary>
internal static class SoundServices
{
    /// <summary>One planner and one store for all pages, a desk for each.</summary>
    public static void AddSound(this IServiceCollection services)
    {
        services.AddSingleton<SoundPlanner>();
        services.AddSingleton<SoundStore>();
        services.AddScoped<PlayDesk>();
    }
}
