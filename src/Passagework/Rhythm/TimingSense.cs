namespace Passagework.Rhythm;

/// <summary>How small a shift of one note can be noticed.</summary>
/// <remarks>
/// A. Friberg and J. Sundberg, Time discrimination in a monotonic, isochronous sequence, 1995: 30 listeners, 100 to
/// 1000 ms; training made no difference.
/// </remarks>
public static class TimingSense
{
    private const double ShortIntervalMs = 240;
    private const double LeastMs = 6;
    private const double Share = 0.025;

    /// <summary>The smallest noticeable shift: 6 ms below 240 ms from note to note, 2.5 % of the interval from there.</summary>
    public static double NoticeableMs(double intervalMs) =>
        intervalMs < ShortIntervalMs ? LeastMs : Share * intervalMs;
}
