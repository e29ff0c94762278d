using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Hands.Explaining;

/// <summary>One thing counted, with its figure apart.</summary>
/// <param name="Figure">Such as <c>20</c>.</param>
/// <param name="Text">Such as <c>inside changes, 4 of them over a string</c>.</param>
public sealed record CountSentence(string Figure, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Figure} {Text}";
}

/// <summary>What the hands do, counted, in words.</summary>
public static class CountSentences
{
    // From here on hands and fingers are called even (chosen by us).
    private const double EvenBalance = 0.8;
    private const double EvenFingers = 0.85;

    /// <summary>The picking hand's changes, the fretting hand's moves, what does not occur, and the even load.</summary>
    public static ImmutableArray<CountSentence> Of(Measurement measured)
    {
        var all = Picking(measured.Picking).Concat(Fretting(measured)).ToList();
        var none = all.Where(count => count.Number == 0 && count.IsTold).Select(count => count.Many).ToList();
        var sentences = all.Where(count => count.Number > 0)
            .Select(count => new CountSentence(
                Whole(count.Number),
                (count.Number == 1 ? count.One : count.Many) + count.More
            ));
        return
        [
            .. sentences,
            .. none.Count == 0
                ? Array.Empty<CountSentence>()
                : [new CountSentence("0", string.Join(", ", none))],
            .. measured.EvenLoad is { } even ? [Even(measured, even)] : Array.Empty<CountSentence>(),
        ];
    }

    // What a teacher looks for is told also where it does not occur.
    private sealed record Count(int Number, string One, string Many, bool IsTold = false)
    {
        public string More { get; init; } = "";
    }

    private static IEnumerable<Count> Picking(PickingCounts counts)
    {
        yield return new Count(counts.SameString, "move on one string", "moves on one string");
        yield return new Count(counts.Inside, "inside change", "inside changes")
        {
            More = Over(counts.InsideSkips, counts.Inside),
        };
        yield return new Count(counts.Outside, "outside change", "outside changes")
        {
            More = Over(counts.OutsideSkips, counts.Outside),
        };
        yield return new Count(
            counts.SweepSteps,
            "stroke carried on to another string",
            "strokes carried on to another string"
        );
        yield return new Count(
            counts.Against,
            "stroke repeated against the crossing",
            "strokes repeated against the crossing"
        );
        yield return new Count(
            counts.SameFingerAgain,
            "pluck by the same finger again",
            "plucks by the same finger again"
        );
    }

    private static IEnumerable<Count> Fretting(Measurement measured)
    {
        var counts = measured.Fretting;
        yield return new Count(counts.Rolls, "roll", "rolls", IsTold: true);
        yield return new Count(counts.Shifts, "shift", "shifts", IsTold: true);
        yield return new Count(measured.Picking.Slurs, "slur", "slurs", IsTold: true);
        yield return new Count(
            counts.SameFingerMoves,
            "move of one finger to another place",
            "moves of one finger to another place"
        );
    }

    private static string Over(int skips, int all)
    {
        if (skips == 0)
        {
            return "";
        }

        return all == 1 ? ", over a string" : $", {Whole(skips)} of them over a string";
    }

    private static CountSentence Even(Measurement measured, double even)
    {
        var why = (measured.Balance >= EvenBalance, measured.Evenness >= EvenFingers) switch
        {
            (true, true) => "neither hand waits long for the other",
            (true, false) => "the hands are even, but few fingers do most of the work",
            (false, true) => $"{Waiting(measured)} often waits for the other",
            _ => $"{Waiting(measured)} often waits, and few fingers do most of the work",
        };
        return new CountSentence(even.ToString("0.00", CultureInfo.InvariantCulture), $"even load: {why}");
    }

    private static string Waiting(Measurement measured)
    {
        var fretting = measured.Demands.Sum(demand => demand.FrettingMs ?? 0);
        var picking = measured.Demands.Sum(demand => demand.PickingMs ?? 0);
        return fretting < picking ? "the fretting hand" : "the picking hand";
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
