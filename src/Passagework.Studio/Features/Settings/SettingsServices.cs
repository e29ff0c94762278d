namespace Passagework.Studio.Features.Settings;

/// <summary>What a user sets once.</summary>
internal static class SettingsServices
{
    /// <summary>Registers it.</summary>
    public static void AddSettings(this IServiceCollection services)
    {
        services.AddSingleton<ReadSettings>();
        services.AddSingleton<ChangeSettings>();
        services.AddSingleton<MakeBackup>();
    }
}
