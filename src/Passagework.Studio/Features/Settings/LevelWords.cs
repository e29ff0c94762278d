using Passagework.Hands;

namespace Passagework.Studio.Features.Settings;

/// <summary>Levels of players in words.</summary>
internal static class LevelWords
{
    /// <summary>Such as "an intermediate player"; a level between two is said as a number.</summary>
    public static string Player(string level)
    {
        if (!Hands.Player.LevelNames.Contains(level))
        {
            return $"a player of level {level}";
        }

        return "aeio".Contains(level[0], StringComparison.Ordinal)
            ? $"an {level} player"
            : $"a {level} player";
    }
}
