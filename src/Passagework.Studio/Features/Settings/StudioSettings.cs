using Passagework.Hands;

namespace Passagework.Studio.Features.Settings;

/// <summary>What the teacher has set once for all pages.</summary>
public sealed record StudioSettings
{
    /// <summary>Name of the room, at the head of every page.</summary>
    public string Room { get; init; } = "Guitar room";

    /// <summary>Name of the teacher; may be empty.</summary>
    public string Teacher { get; init; } = "";

    /// <summary>Level of the player that pages begin with, 0 beginner to 4 expert.</summary>
    public double Level { get; init; } = 2;

    /// <summary>Light, dark, or as the system has it.</summary>
    public Theme Theme { get; init; }

    /// <summary>Whether the first page still leads through its first minute.</summary>
    public bool IsNewcomer { get; init; } = true;

    /// <summary>Whether the demo has been put in, so that taking it out lasts.</summary>
    public bool DemoWasInstalled { get; init; }

    /// <summary>The player that pages begin with.</summary>
    public Player Player => Player.At(Level);
}

/// <summary>Ink on paper, or paper on ink.</summary>
public enum Theme
{
    /// <summary>As the system has it.</summary>
    System,

    /// <summary>Dark on light.</summary>
    Light,

    /// <summary>Light on dark.</summary>
    Dark,
}
