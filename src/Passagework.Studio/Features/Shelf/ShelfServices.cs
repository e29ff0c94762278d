namespace Passagework.Studio.Features.Shelf;

/// <summary>The actions of the shelf.</summary>
internal static class ShelfServices
{
    /// <summary>Registers them.</summary>
    public static void AddShelf(this IServiceCollection services)
    {
        services.AddSingleton<ShelfMeasures>();
        services.AddSingleton<OwnExercises>();
        services.AddSingleton<ListShelf>();
        services.AddSingleton<BeginExercise>();
        services.AddSingleton<ShelfActs>();
    }
}
