using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features;

/// <summary>Everything a user can do, one class for each.</summary>
internal static class FeatureServices
{
    /// <summary>Registers the features.</summary>
    public static void AddStudioFeatures(this IServiceCollection services)
    {
        services.AddSingleton<ReadSettings>();
        services.AddSingleton<ChangeSettings>();
        services.AddSingleton<OpenExercise>();
        services.AddSingleton<ChangeExercise>();
        services.AddSingleton<UndoExercise>();
        services.AddSingleton<KeepExercise>();
        services.AddSingleton<CopyExercise>();
        services.AddSingleton<AnnotateExercise>();
        services.AddSingleton<ThrowAwayExercise>();
        services.AddChoosing();
    }
}
