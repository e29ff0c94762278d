namespace Passagework.Exercises;

/// <summary>How a cell moves along the path.</summary>
public sealed record Movement
{
    /// <summary>Path steps between cells, −7 to 7; 0 only with <see cref="Repeat"/> above 1.</summary>
    public int Step { get; init; } = 1;

    /// <summary>Which way the cells go.</summary>
    public Direction Direction { get; init; } = Direction.Up;

    /// <summary>First path index used; null for the first.</summary>
    public int? From { get; init; }

    /// <summary>Last path index used; null for the last.</summary>
    public int? To { get; init; }

    /// <summary>Times that the whole is played.</summary>
    public int Repeat { get; init; } = 1;

    /// <summary>What happens where the line turns.</summary>
    public Turn Turn { get; init; } = Turn.BackToBack;

    /// <summary>How the line ends.</summary>
    public Ending Ending { get; init; } = Ending.None;
}

/// <summary>Which way the cells go.</summary>
public enum Direction
{
    /// <summary>From the first note of the path.</summary>
    Up,

    /// <summary>The mirror: every offset negated, from the last note of the path.</summary>
    Down,

    /// <summary>Up, then the mirror.</summary>
    UpAndDown,

    /// <summary>The mirror, then up.</summary>
    DownAndUp,
}

/// <summary>What happens where the line turns.</summary>
public enum Turn
{
    /// <summary>The second half starts with its own first cell.</summary>
    BackToBack,

    /// <summary>A note repeated at the turn is played once.</summary>
    Shared,
}

/// <summary>How the line ends.</summary>
public enum Ending
{
    /// <summary>With its last cell.</summary>
    None,

    /// <summary>The last note lasts to the end of its bar.</summary>
    HoldLast,

    /// <summary>The root nearest along the path is added and lasts to the end of the bar.</summary>
    HoldRoot,

    /// <summary>Path notes towards that root are added, and it lasts to the end of the bar.</summary>
    FillBar,
}
