using System.Globalization;

namespace Passagework.Hands;

/// <summary>Where an exercise tops out, in felt beats a minute: a modelled figure, so never without its span.</summary>
/// <param name="Bpm">At the plain values of the hands.</param>
/// <param name="Low">Slower only in one of ten draws of the hands.</param>
/// <param name="High">Faster only in one of ten.</param>
public readonly record struct TopTempo(double Bpm, double Low, double High)
{
    /// <summary>The top tempo of a ceiling; null where no hand is asked anything.</summary>
    /// <param name="ceiling">In notes a second.</param>
    /// <param name="notesPerBeat">Notes to a felt beat.</param>
    public static TopTempo? Of(Ceiling ceiling, int notesPerBeat) =>
        ceiling is { Least: { } least, Range: { } range }
            ? new TopTempo(
                60 * least / notesPerBeat,
                60 * range.Low / notesPerBeat,
                60 * range.High / notesPerBeat
            )
            : null;

    /// <summary>The span in whole beats, such as <c>61–80</c>; one figure where both ends are the same.</summary>
    public string Span
    {
        get
        {
            var (low, high) = (Whole(Low), Whole(High));
            return low == high ? low : $"{low}–{high}";
        }
    }

    /// <summary>The plain figure in whole beats, such as <c>75</c>.</summary>
    public string Plain => Whole(Bpm);

    private static string Whole(double bpm) => bpm.ToString("F0", CultureInfo.InvariantCulture);
}
