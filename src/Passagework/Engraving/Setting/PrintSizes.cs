namespace Passagework.Engraving.Setting;

/// <summary>Least sizes on a page for a student (assumed by us), in millimetres.</summary>
internal static class PrintSizes
{
    /// <summary>A printer's point: 72 to the inch.</summary>
    public const double PointMm = 25.4 / 72;

    /// <summary>Em of the smallest words: 9 points.</summary>
    public const double TextMm = 9 * PointMm;

    /// <summary>Em of figures in pictures: a little more than the least, for they stand alone.</summary>
    public const double PictureFigureMm = 9.4 * PointMm;

    /// <summary>Height of a fret number of 9 points.</summary>
    public const double DigitMm = 2.22;

    /// <summary>Height of a finger of 7 points.</summary>
    public const double FingerMm = 1.65;
}
