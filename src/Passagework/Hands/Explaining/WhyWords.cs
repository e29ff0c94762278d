using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Hands.Explaining;

/// <summary>Says why a note is played as it is, beside the best of the other ways.</summary>
/// <param name="bpm">The top tempo as it is.</param>
/// <param name="present">How the note is played.</param>
/// <param name="isLocked">Whether the teacher has fixed it.</param>
internal sealed class WhyWords(double? bpm, string present, bool isLocked)
{
    // Less than half a beat a minute is no difference that anybody could hear (chosen by us).
    private const double Same = 0.5;

    /// <summary>A sentence.</summary>
    /// <param name="others">The best first.</param>
    /// <param name="kind">Finger or stroke.</param>
    public string Of(ImmutableArray<OtherWay> others, string kind)
    {
        var locked = isLocked ? $"The {present} is locked. " : "";
        return locked
            + (others is [var best, ..] ? Beside(best, kind) : $"There is no other {kind} to choose.");
    }

    private string Beside(OtherWay best, string kind)
    {
        if (best.Impossible is { } why)
        {
            return $"No other {kind} is possible: {why}.";
        }

        if (bpm is not { } now || best.Bpm is not { } then)
        {
            return $"{With(best)} nothing would limit the tempo either.";
        }

        var change = then - now;
        if (Math.Abs(change) < Same)
        {
            return $"{With(best)} it would go as well: the top tempo stays at {Whole(now)} beats a minute.";
        }

        return change < 0
            ? $"{With(best)}, the next best, the top tempo falls from {Whole(now)} to {Whole(then)} beats a minute."
            : $"{With(best)} the top tempo would rise from {Whole(now)} to {Whole(then)} beats a minute; the {present} follows the rule of the strokes or takes less effort over the whole line.";
    }

    // A place is "at 5:3"; a finger or a stroke is played with.
    private static string With(OtherWay way) =>
        NumberWords.Sentence(way.Lock.String is not null ? way.Words : $"with the {way.Words}");

    private static string Whole(double number) => number.ToString("0", CultureInfo.InvariantCulture);
}
