using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Sound;

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

    /// <summary>How boxes, notes and counts are called, and where plans start and aim.</summary>
    public RoomStyle Style { get; init; }

    /// <summary>How a new exercise is picked.</summary>
    public Technique Technique { get; init; }

    /// <summary>The first stroke of a new exercise.</summary>
    public FirstStroke First { get; init; }

    /// <summary>What the play line of a page sounds like at first.</summary>
    public GuitarSound Guitar { get; init; } = GuitarSound.CleanElectric;

    /// <summary>Whether the first page still leads through its first minute.</summary>
    public bool IsNewcomer { get; init; } = true;

    /// <summary>Whether the demo has been put in, so that taking it out lasts.</summary>
    public bool DemoWasInstalled { get; init; }

    /// <summary>The player that pages begin with.</summary>
    public Player Player => Player.At(Level);

    /// <summary>Technique and first stroke of a new exercise.</summary>
    public PickingPlan Picking => new() { Technique = Technique, First = First };
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
