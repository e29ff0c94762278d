using Passagework.Engraving.Scores;
using Passagework.Exercises;

namespace Passagework.Engraving.Screens;

/// <summary>How an exercise stands on a screen; lengths in pixels.</summary>
public sealed record ScreenOptions
{
    /// <summary>One staff space where there is room for a whole desk.</summary>
    public const double UsualSpacePx = 8.7;

    /// <summary>One staff space of a larger score, for a projector or for tired eyes (chosen by us).</summary>
    public const double LargerSpacePx = 12.2;

    /// <summary>
    /// Width of a system, 280 to 4,000. From 900 on the rows are named in the margin; below 1,100 a system holds at most
    /// two bars, below 600 two felt beats, or a bar whose beats are odd.
    /// </summary>
    public double WidthPx { get; init; } = 1312;

    /// <summary>Distance of two staff lines, 6 to 20; everything else follows from it.</summary>
    public double SpacePx { get; init; } = UsualSpacePx;

    /// <summary>Felt beats a minute for the strip; null takes the recipe's tempo, else a relaxed one for the player.</summary>
    public double? TempoBpm { get; init; }

    /// <summary>Whether there is a staff.</summary>
    public bool Staff { get; init; } = true;

    /// <summary>Whether there is tab; one of the two must be there.</summary>
    public bool Tab { get; init; } = true;

    /// <summary>Whether the fretting fingers are written.</summary>
    public bool Fingers { get; init; } = true;

    /// <summary>Which strokes are written.</summary>
    public ShownStrokes Strokes { get; init; } = ShownStrokes.All;

    /// <summary>Whether the counting stands under all bars.</summary>
    public bool Counts { get; init; } = true;

    /// <summary>How the room counts and names notes.</summary>
    public RoomStyle Style { get; init; }

    /// <summary>Whether the strip of both hands stands under the music.</summary>
    public bool Strip { get; init; } = true;

    /// <summary>Index of the note whose column lies on a band; null for none.</summary>
    public int? Chosen { get; init; }

    /// <summary>Put before every id, so that several scores can stand on one page.</summary>
    public string IdPrefix { get; init; } = "";
}
