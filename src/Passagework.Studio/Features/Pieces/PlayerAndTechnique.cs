using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Studio.Features.Pieces;

/// <summary>For whom and how a piece is looked through, as an address asks.</summary>
/// <param name="Player">The player.</param>
/// <param name="Technique">The technique; null for that of the piece.</param>
/// <param name="Fault">What of the address could not be read; the usual stands in its place.</param>
public sealed record PlayerAndTechnique(Player Player, Technique? Technique, Fault? Fault)
{
    /// <summary>Reads both words; empty ones ask for the usual.</summary>
    public static PlayerAndTechnique Of(string? level, string? technique, Player usual)
    {
        var (player, noLevel) = string.IsNullOrEmpty(level) ? (usual, null) : LevelOf(level, usual);
        if (string.IsNullOrEmpty(technique))
        {
            return new PlayerAndTechnique(player, null, noLevel);
        }

        return RecipeWords.Techniques.Read(technique).TryGet(out var picked, out var noTechnique)
            ? new PlayerAndTechnique(player, picked, noLevel)
            : new PlayerAndTechnique(player, null, noTechnique);
    }

    private static (Player Player, Fault? Fault) LevelOf(string level, Player usual) =>
        PlayerJson.ReadLevel(level).TryGet(out var player, out var fault) ? (player, null) : (usual, fault);
}
