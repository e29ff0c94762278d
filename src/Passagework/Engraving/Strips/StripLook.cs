using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Strips;

/// <summary>How a strip is drawn; sizes in staff spaces.</summary>
/// <param name="HalfHeight">Height of one hand's half.</param>
/// <param name="WidestBar">Width of a bar where notes stand far apart.</param>
/// <param name="Text">Em of names and figures.</param>
public sealed record StripLook(double HalfHeight, double WidestBar, double Text)
{
    /// <summary>For paper: the hands are named in the strip, nothing is below nine points.</summary>
    public static StripLook Paper { get; } = new(4.6, 1.1, 1.8) { LeastTextMm = PrintSizes.TextMm };

    /// <summary>Least em of names and figures, in millimetres.</summary>
    public double LeastTextMm { get; init; }

    /// <summary>
    /// What bars are whole multiples of, in millimetres: the dots of a screen; so a time is drawn to half of it. 0 for as long
    /// as they are.
    /// </summary>
    public double GridMm { get; init; }

    /// <summary>Whether the signs of moves are drawn; else their room is left free.</summary>
    public bool Signs { get; init; } = true;

    /// <summary>What is written at the left end.</summary>
    public StripLabels Labels { get; init; }
}

/// <summary>What is written at the left end of a strip.</summary>
public enum StripLabels
{
    /// <summary>The name of each hand, and the limit where there is room before the music.</summary>
    NamesAndLimit,

    /// <summary>A scale before the music: 0 at the middle line, the limit at its line.</summary>
    Scale,

    /// <summary>Nothing.</summary>
    None,
}
