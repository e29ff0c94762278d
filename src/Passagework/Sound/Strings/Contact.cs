namespace Passagework.Sound.Strings;

/// <summary>What an action does to the string, apart from the instrument; assumed by us, tested by direction.</summary>
/// <param name="Milliseconds">Rounding of the pulse at middle strength.</param>
/// <param name="Height">Height of the pulse at full strength.</param>
/// <param name="Place">Factor on the usual distance from the bridge.</param>
/// <param name="Noise">Height of the contact's noise at full strength.</param>
/// <param name="Across">Share that sets the string swinging the other way.</param>
internal readonly record struct Contact(
    double Milliseconds,
    double Height,
    double Place,
    double Noise,
    double Across
)
{
    /// <summary>The contact of an action.</summary>
    /// <remarks>
    /// An up-stroke meets the string with less of the plectrum, nearer the bridge, and lets go quicker; the thumb is
    /// broad, a finger's nail between; a hammering finger is broad and gives less; a finger that pulls off plucks.
    /// </remarks>
    public static Contact Of(StringAction action) =>
        action switch
        {
            StringAction.Down => new(0.20, 1, 1, 0.30, 0.20),
            StringAction.Up => new(0.14, -0.9, 0.86, 0.34, 0.28),
            StringAction.Thumb => new(0.65, 1, 1.12, 0.02, 0.30),
            StringAction.Finger => new(0.34, -0.95, 1.0, 0.03, 0.25),
            StringAction.HammerOn => new(1.5, 0.5, 1, 0.015, 0.10),
            StringAction.PullOff => new(0.8, 0.5, 1, 0.01, 0.35),
            StringAction.Dead => new(0.4, 0.9, 1, 0.16, 0.20),
            StringAction.Rake => new(0.4, 0.55, 0.95, 0.11, 0.20),
            _ => new(1.9, 0, 1, 0, 0),
        };

    /// <summary>Whether the action goes on with a string that sounds.</summary>
    public static bool IsSlur(StringAction action) =>
        action is StringAction.HammerOn or StringAction.PullOff or StringAction.Slide;
}
