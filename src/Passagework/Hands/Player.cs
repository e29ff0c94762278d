using System.Collections.Immutable;

namespace Passagework.Hands;

/// <summary>One person's two hands.</summary>
public sealed record Player
{
    private Player(double level, HandParameters parameters)
    {
        Level = level;
        Parameters = parameters;
    }

    /// <summary>The five levels by name, 0 to 4.</summary>
    public static ImmutableArray<string> LevelNames { get; } =
    ["beginner", "elementary", "intermediate", "advanced", "expert"];

    /// <summary>0 beginner to 4 expert; decimals lie between.</summary>
    public double Level { get; }

    /// <summary>The numbers of both hands.</summary>
    public HandParameters Parameters { get; init; }

    /// <summary>Size of the fretting hand, 1 is the average adult; multiplies the largest spans.</summary>
    public double HandSize { get; init; } = 1;

    /// <summary>Fingers, 1 to 4, that this player never uses.</summary>
    public ImmutableArray<int> Avoid { get; init; } = [];

    /// <summary>After which strokes the plectrum clears the strings.</summary>
    public Clear Clear { get; init; } = Clear.Both;

    /// <summary>A player at a level, 0 to 4, decimals between.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above 4, or not a number.</exception>
    public static Player At(double level) => new(level, HandParameters.At(level));

    /// <summary>The same hands at another level, with that level's default numbers.</summary>
    public Player MovedTo(double level) =>
        At(level) with
        {
            HandSize = HandSize,
            Avoid = Avoid,
            Clear = Clear,
        };

    /// <summary>The name of the level where it is a whole one, else the number.</summary>
    public string LevelText =>
        Level == Math.Floor(Level)
            ? LevelNames[(int)Level]
            : Level.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>After which strokes the plectrum leaves the plane of the strings by itself.</summary>
public enum Clear
{
    /// <summary>After both.</summary>
    Both,

    /// <summary>After a down-stroke only: changes after an up-stroke are blocked.</summary>
    AfterDown,

    /// <summary>After an up-stroke only: changes after a down-stroke are blocked.</summary>
    AfterUp,
}
