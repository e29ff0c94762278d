namespace Passagework.Studio.Features.Exercises;

/// <summary>What a user does with one exercise.</summary>
internal static class ExerciseServices
{
    /// <summary>Registers it.</summary>
    public static void AddExercises(this IServiceCollection services)
    {
        services.AddSingleton<OpenExercise>();
        services.AddSingleton<ChangeExercise>();
        services.AddSingleton<UndoExercise>();
        services.AddSingleton<KeepExercise>();
        services.AddSingleton<CopyExercise>();
        services.AddSingleton<AnnotateExercise>();
        services.AddSingleton<ThrowAwayExercise>();
        services.AddSingleton<MarkExercise>();
        services.AddSingleton<ListKnown>();
        services.AddTransient<ExerciseDesk>();
    }
}
