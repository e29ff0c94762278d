using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Scores;

/// <summary>
/// How large words and figures stand beside a staff, in staff spaces, and how small they may become on a small staff.
/// </summary>
/// <param name="Digit">Height of a tab number.</param>
/// <param name="Text">Em of words, counts and letters.</param>
/// <param name="TabLetter">Em of letters between the lines of a tab.</param>
/// <param name="Numeral">Em of position numerals and the tempo mark.</param>
public sealed record ScoreLetters(double Digit, double Text, double TabLetter, double Numeral)
{
    /// <summary>For paper: nothing below nine points (assumed by us), fingers not below seven.</summary>
    public static ScoreLetters Paper { get; } = new(1.3, 2.0, 1.8, 2.4);

    /// <summary>Least height of a tab number, in millimetres.</summary>
    public double LeastDigitMm { get; init; } = PrintSizes.DigitMm;

    /// <summary>Least em of words, in millimetres.</summary>
    public double LeastTextMm { get; init; } = PrintSizes.TextMm;

    /// <summary>Least height of a finger, in millimetres.</summary>
    public double LeastFingerMm { get; init; } = PrintSizes.FingerMm;
}
