namespace Passagework.Studio.Features.Pieces;

/// <summary>The actions on pieces.</summary>
internal static class PieceServices
{
    /// <summary>Registers them.</summary>
    public static void AddPieces(this IServiceCollection services)
    {
        services.AddSingleton<PieceFacts>();
        services.AddSingleton<ListPieces>();
        services.AddSingleton<OpenPiece>();
        services.AddSingleton<KeepPiece>();
        services.AddSingleton<ThrowAwayPiece>();
        services.AddSingleton<PieceActs>();
        services.AddSingleton<PreparingExercises>();
        services.AddSingleton<PreparePiece>();
    }
}
