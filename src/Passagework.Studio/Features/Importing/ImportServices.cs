namespace Passagework.Studio.Features.Importing;

/// <summary>The actions that take music in.</summary>
internal static class ImportServices
{
    /// <summary>Registers them.</summary>
    public static void AddImporting(this IServiceCollection services)
    {
        services.AddSingleton<WaitingUploads>();
        services.AddSingleton<TakeUpload>();
        services.AddSingleton<ImportExercise>();
    }
}
