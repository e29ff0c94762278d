using Passagework.Hands;

namespace Passagework.Choosing.Measures;

/// <summary>A player and the same hands at the first and the last level, shared by all that is measured for one question.</summary>
public sealed class PlayerLevels
{
    /// <summary>The levels about a player.</summary>
    public PlayerLevels(Player player)
    {
        Player = player;
        First = player.MovedTo(0);
        Last = player.MovedTo(Player.LevelNames.Length - 1);
    }

    /// <summary>Who asks.</summary>
    public Player Player { get; }

    /// <summary>The same hands as a beginner's.</summary>
    public Player First { get; }

    /// <summary>The same hands as an expert's.</summary>
    public Player Last { get; }
}
