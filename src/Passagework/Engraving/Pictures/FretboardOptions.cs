using Passagework.Exercises;

namespace Passagework.Engraving.Pictures;

/// <summary>How a neck is drawn.</summary>
public sealed record FretboardOptions
{
    /// <summary>Which way the strings run.</summary>
    public NeckTurn Turn { get; init; } = NeckTurn.Horizontal;

    /// <summary>Whether it is the mirror image, for a left-handed player.</summary>
    public bool LeftHanded { get; init; }

    /// <summary>What stands in the dots of played notes.</summary>
    public DotText Dots { get; init; } = DotText.Order;

    /// <summary>Which notes count as played.</summary>
    public NotesShown Shown { get; init; } = NotesShown.FirstGroup;

    /// <summary>Whether lines show the way from note to note.</summary>
    public bool Route { get; init; } = true;

    /// <summary>Length along and beside the neck in mm; grows where frets would be too narrow for numbers.</summary>
    public double LengthMm { get; init; } = 84;

    /// <summary>First fret drawn, from 1; null for as many as needed.</summary>
    public int? FromFret { get; init; }

    /// <summary>Last fret drawn; null for as many as needed.</summary>
    public int? ToFret { get; init; }

    /// <summary>How the room calls boxes and notes.</summary>
    public RoomStyle Style { get; init; }
}

/// <summary>Which way the strings of a drawn neck run.</summary>
public enum NeckTurn
{
    /// <summary>Nut at the left, string 1 on top, the same way up as tab.</summary>
    Horizontal,

    /// <summary>Nut on top, string 1 at the right.</summary>
    Vertical,
}

/// <summary>What stands in the dots of played notes.</summary>
public enum DotText
{
    /// <summary>The fretting finger.</summary>
    Finger,

    /// <summary>The degree above the root.</summary>
    Degree,

    /// <summary>The note's name.</summary>
    Name,

    /// <summary>Which note it is, counted from 1; a place played again keeps its first number.</summary>
    Order,

    /// <summary>Nothing.</summary>
    None,
}

/// <summary>Which notes a drawn neck shows as played.</summary>
public enum NotesShown
{
    /// <summary>Those of the first group; the whole line where groups have one place only.</summary>
    FirstGroup,

    /// <summary>Those of the whole line.</summary>
    WholeLine,
}
