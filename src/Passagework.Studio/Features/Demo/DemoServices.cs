namespace Passagework.Studio.Features.Demo;

/// <summary>The actions on the demo.</summary>
internal static class DemoServices
{
    /// <summary>Registers them.</summary>
    public static void AddDemo(this IServiceCollection services)
    {
        services.AddSingleton<RemoveDemo>();
        services.AddSingleton<InstallDemo>();
    }
}
