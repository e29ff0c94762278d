using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>What both hands do that no criterion says by itself: skips at the joins, starting strokes, rolls.</summary>
internal static class HandRemarks
{
    private const double Many = 0.25;

    /// <summary>Merits, the most telling first.</summary>
    public static IEnumerable<string> Pros(MeasuredCandidate candidate)
    {
        var skips = SkippedJoins(candidate);
        if (skips.Length > 0)
        {
            yield return skips;
        }

        if (
            candidate.Forms.All(form =>
                HasGroups(form) && AlternatesStarts(form.Measured.Picking.GroupStarts)
            )
        )
        {
            yield return "turns the starting stroke round from group to group";
        }

        var rolls = Rolls(candidate);
        if (rolls.Length > 0)
        {
            yield return rolls;
        }
    }

    /// <summary>Faults, the most telling first.</summary>
    public static IEnumerable<string> Cons(MeasuredCandidate candidate)
    {
        if (candidate.Forms.All(form => HasGroups(form) && StartsAlike(form.Measured.Picking.GroupStarts)))
        {
            yield return "every group starts with the same stroke";
        }

        if (
            candidate.Forms.All(form =>
                form.Measured.Picking is { OneStrokeForEachPlace: true, Reversals: > 0 }
                && form.Measured.Picking.Strokes > 2 * Places(form)
            )
        )
        {
            yield return candidate.Forms.Length > 1
                ? "gives each place on the neck one stroke only: it takes both first strokes to train both"
                : "gives each place on the neck one stroke only";
        }
    }

    // "skips a string at four of seven joins, each time after a down-stroke".
    private static string SkippedJoins(MeasuredCandidate candidate)
    {
        var joins = Facts.Joins(candidate.Forms[0]);
        var skips = joins.Where(Facts.Skips).ToList();
        if (skips.Count == 0)
        {
            return "";
        }

        var text =
            skips.Count == joins.Length
                ? "skips a string at every join"
                : $"skips a string at {NumberWords.OutOf(skips.Count, joins.Length)} joins";
        var strokes = skips.Select(skip => skip.From.Stroke).Distinct().ToList();
        if (!strokes.TrueForAll(stroke => stroke is Stroke.Down or Stroke.Up))
        {
            return text;
        }

        if (strokes.Count > 1)
        {
            return text + ", after strokes both ways";
        }

        var (one, other) =
            strokes[0] == Stroke.Down ? ("a down-stroke", "an up-stroke") : ("an up-stroke", "a down-stroke");
        return candidate.Forms.Length > 1
            ? $"{text}, each time after {one} (after {other} when it starts the other way)"
            : $"{text}, each time after {one}";
    }

    private static string Rolls(MeasuredCandidate candidate)
    {
        var form = candidate.Forms[0];
        var moves = form.Realization.Notes.Length - 1;
        var rolls = form.Measured.Fretting.Rolls;
        return rolls >= Many * moves
            ? $"asks the fretting hand to roll a finger across at {NumberWords.OutOf(rolls, moves)} moves"
            : "";
    }

    // Groups of two notes or more.
    private static bool HasGroups(MeasuredForm form) => form.Measured.Fit?.Ambiguity is not null;

    private static bool AlternatesStarts(string starts) =>
        starts.Length > 2
        && starts.Zip(starts.Skip(1)).All(pair => pair.First != pair.Second)
        && starts.All(start => start is 'D' or 'U');

    private static bool StartsAlike(string starts) =>
        starts.Length > 2 && starts.Distinct().Count() == 1 && starts[0] is 'D' or 'U';

    private static int Places(MeasuredForm form) =>
        form.Realization.Notes.Select(note => note.Place).Distinct().Count();
}
