using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>Whether an exercise stays hard: its ceiling at the five levels against that of the plain scale.</summary>
/// <param name="Levels">One for each level, beginner to expert.</param>
public sealed record Growth(ImmutableArray<LevelCeiling> Levels)
{
    /// <summary>
    /// Relative difficulty at the last level over that at the first: above 1 it gets relatively harder as the player
    /// grows, below 1 it is outgrown. Null where no hand is asked anything or there is no scale to compare with.
    /// </summary>
    public double? Ratio => Levels[^1].RelativeDifficulty / Levels[0].RelativeDifficulty;

    /// <summary>The ceilings of an exercise at the five levels, for hands like a player's.</summary>
    /// <param name="recipe">The exercise.</param>
    /// <param name="hands">Gives hand size, avoided fingers and clearing stroke; its level is left aside.</param>
    public static Outcome<Growth> Of(Recipe recipe, Player hands) =>
        LineBuilder
            .Build(recipe)
            .Then<Growth>(line =>
            {
                var levels = ImmutableArray.CreateBuilder<LevelCeiling>();
                for (var level = 0; level < Player.LevelNames.Length; level++)
                {
                    var player = hands.MovedTo(level);
                    if (!LevelCeiling.Of(line, player).TryGet(out var ceiling, out var fault))
                    {
                        return fault;
                    }

                    levels.Add(ceiling);
                }

                return new Growth(levels.ToImmutable());
            });
}

/// <summary>A ceiling at one level.</summary>
/// <param name="Level">0 beginner to 4 expert.</param>
/// <param name="Ceiling">Of the exercise.</param>
/// <param name="ScaleCeiling">Least ceiling of the plain scale in the same layout; null for a written line.</param>
public sealed record LevelCeiling(int Level, Ceiling Ceiling, double? ScaleCeiling)
{
    /// <summary>How many times slower than the plain scale; null where either has no ceiling.</summary>
    public double? RelativeDifficulty => ScaleCeiling / Ceiling.Least;

    internal static Outcome<LevelCeiling> Of(Line line, Player player) =>
        Realizer
            .Plan(line, player)
            .Then<LevelCeiling>(planned => new LevelCeiling(
                (int)player.Level,
                CeilingFinder.Of(planned.Demands, player.Parameters),
                ScaleReference.For(line.Recipe, player).LeastCeiling
            ));
}
