using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Strips;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Screens;

/// <summary>How a score for a screen is engraved: in millimetres of a usual staff, each so many pixels.</summary>
internal sealed class ScreenLayout
{
    /// <summary>Height of the staff in millimetres; what it is on the screen follows from the pixels of a space.</summary>
    public const double StaffMm = 7;

    /// <summary>Distance of two staff lines in millimetres.</summary>
    public const double SpaceMm = StaffMm / 4;

    // From which widths on rows are named and lines may be longer.
    private const double NamedFromPx = 900;
    private const double TwoBarsFromPx = 600;
    private const double FreeFromPx = 1_100;

    // The look's sizes: figures 13.5 px at its staff space and never below 13, tab digits 1.2 spaces high and on a small
    // staff never below 10.4 px, numerals 16 px.
    private const double TextSpaces = 13.5 / ScreenOptions.UsualSpacePx;
    private const double LeastTextPx = 13;
    private const double DigitSpaces = 1.2;
    private const double LeastDigitPx = 10.4;
    private const double NumeralSpaces = 16 / ScreenOptions.UsualSpacePx;

    // Chosen by eye: the halves of the strip, and its widest bars.
    private const double HalfStrip = 5.4;
    private const double WidestBar = 2;

    public ScreenLayout(ScreenOptions options, Meter meter)
    {
        Options = options;
        var pxPerMm = options.SpacePx / SpaceMm;
        IsNamed = options.WidthPx >= NamedFromPx;
        Frame = new PxFrame(pxPerMm, IsNamed ? ScreenMargin.WidthPx : 0);
        Strip = new StripLook(HalfStrip, WidestBar, TextSpaces)
        {
            LeastTextMm = LeastTextPx / pxPerMm,
            GridMm = 1 / pxPerMm,
            Signs = false,
            Labels = IsNamed ? StripLabels.Scale : StripLabels.None,
        };
        Music = new ScoreOptions
        {
            WidthMm = (options.WidthPx - Frame.LeftPx) / pxPerMm,
            StaffMm = StaffMm,
            GridMm = 1 / pxPerMm,
            Letters = LettersFor(pxPerMm),
            LongestSystem = Longest(options.WidthPx, meter),
            Layout = LayoutOf(options),
            Fingers = options.Fingers,
            Strokes = options.Strokes,
            Counting = options.Counts ? CountedBars.All : CountedBars.None,
            Syllables = CountSyllables.Of(options.Style.Counting),
            ShortLast = true,
        };
    }

    /// <summary>What was asked for.</summary>
    public ScreenOptions Options { get; }

    /// <summary>How millimetres become pixels.</summary>
    public PxFrame Frame { get; }

    /// <summary>Whether rows are named in the margin.</summary>
    public bool IsNamed { get; }

    /// <summary>How the music is engraved.</summary>
    public ScoreOptions Music { get; }

    /// <summary>How the strip is drawn.</summary>
    public StripLook Strip { get; }

    /// <summary>Words and figures for a screen with so many pixels a millimetre.</summary>
    public static ScoreLetters LettersFor(double pxPerMm) =>
        new(DigitSpaces, TextSpaces, TextSpaces, NumeralSpaces)
        {
            LeastDigitMm = LeastDigitPx / pxPerMm,
            LeastTextMm = LeastTextPx / pxPerMm,
            LeastFingerMm = 0,
        };

    // Two beats that are half a bar are read at a glance; of an odd number of beats the bar stays whole where it fits.
    private static Fraction? Longest(double widthPx, Meter meter)
    {
        if (widthPx >= FreeFromPx)
        {
            return null;
        }

        var two = Fraction.Of(2);
        if (widthPx >= TwoBarsFromPx)
        {
            return meter.Bar * two;
        }

        return meter.BeatsPerBar % 2 == 0 ? meter.Beat * two : meter.Bar;
    }

    private static ScoreLayout LayoutOf(ScreenOptions options) =>
        (options.Staff, options.Tab) switch
        {
            (true, true) => ScoreLayout.StaffAndTab,
            (true, false) => ScoreLayout.Staff,
            _ => ScoreLayout.TabWithRhythm,
        };
}
