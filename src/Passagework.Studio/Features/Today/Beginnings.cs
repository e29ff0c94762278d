using Microsoft.AspNetCore.Mvc;
using Passagework.Foundation;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Today;

/// <summary>Begins an exercise from the sentence on the day's page.</summary>
internal static class Beginnings
{
    /// <summary>Registers what the day's page needs.</summary>
    public static void AddToday(this IServiceCollection services) => services.AddSingleton<ReadToday>();

    /// <summary>Maps the form's address; leads to the exercise, or back with what cannot be.</summary>
    public static void MapBeginnings(this WebApplication app) =>
        app.MapPost(
            "/exercises/begin",
            async (
                [FromForm] IFormCollection form,
                ChangeExercise change,
                ReadSettings settings,
                CancellationToken stop
            ) =>
            {
                if (
                    !IdeaStart.Idea(name => form[name].FirstOrDefault()).TryGet(out var recipe, out var fault)
                )
                {
                    return Back(fault);
                }

                var first = (await settings.Read(stop)).First;
                var begins = recipe with { Picking = recipe.Picking with { First = first } };
                return await change.Begin(begins, stop: stop) switch
                {
                    ChangeAnswer.Kept begun => Results.Redirect(begun.Exercise.Key.Url),
                    ChangeAnswer.Failed failed => Back(failed.Fault),
                    _ => throw new System.Diagnostics.UnreachableException(),
                };
            }
        );

    private static IResult Back(Fault fault) =>
        Results.Redirect($"/?problem={Uri.EscapeDataString($"{fault.What}; {fault.Right}")}");
}
