using System.Collections.Immutable;

namespace Passagework.Studio.Features.Settings;

/// <summary>Levels of players in words.</summary>
internal static class LevelWords
{
    /// <summary>The five levels, from the lowest.</summary>
    public static ImmutableArray<string> All { get; } =
    ["a beginner", "an elementary player", "an intermediate player", "an advanced player", "an expert"];

    /// <summary>Such as "an intermediate player"; a level between two is said as a number.</summary>
    public static string Player(string level) =>
        Hands.Player.LevelNames.IndexOf(level) is >= 0 and var known
            ? All[known]
            : $"a player of level {level}";
}
