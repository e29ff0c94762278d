using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Demo;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Exporting;
using Passagework.Studio.Features.Importing;
using Passagework.Studio.Features.Pieces;
using Passagework.Studio.Features.Settings;
using Passagework.Studio.Features.Shelf;
using Passagework.Studio.Features.Sound;
using Passagework.Studio.Features.Today;

namespace Passagework.Studio.Features;

/// <summary>Everything a user can do, one class for each.</summary>
internal static class FeatureServices
{
    /// <summary>Registers the features.</summary>
    public static void AddStudioFeatures(this IServiceCollection services)
    {
        services.AddSingleton<KeptTexts>();
        services.AddSettings();
        services.AddExercises();
        services.AddChoosing();
        services.AddExporting();
        services.AddShelf();
        services.AddImporting();
        services.AddPieces();
        services.AddDemo();
        services.AddHostedService<WarmUp>();
        services.AddSound();
        services.AddToday();
    }
}
