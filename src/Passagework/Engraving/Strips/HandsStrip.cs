using System.Collections.Immutable;
using Passagework.Engraving.Scores;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>
/// Draws under each system what the move to each note asks of both hands, note by note: the fretting hand above a middle
/// line, the picking hand below it, against the time there is at a tempo.
/// </summary>
/// <example>
/// <c>HandsStrip.Under(score, Measurer.Measure(recipe, player), tempoBpm: 60)</c>
/// </example>
public static class HandsStrip
{
    private const double SlowestBpm = 10;
    private const double FastestBpm = 1000;

    /// <summary>The score with a strip under every system.</summary>
    /// <param name="score">The systems of the same notes.</param>
    /// <param name="measured">What the notes ask.</param>
    /// <param name="tempoBpm">Felt beats a minute, 10 to 1000.</param>
    public static Outcome<Score> Under(Score score, Measurement measured, double tempoBpm)
    {
        if (tempoBpm is not (>= SlowestBpm and <= FastestBpm))
        {
            return new Fault(
                System.FormattableString.Invariant($"{tempoBpm} is no tempo"),
                "tempo",
                "10 to 1000 beats a minute"
            );
        }

        var times = StripTimes.Of(measured.Realization, tempoBpm);
        var moves = StripMoves.Of(measured.Realization);
        var plan = new StripPlan(measured.Demands, moves, times, StripScale.Of(measured.Demands, times));
        var systems = score.Systems.Select(system => new SystemStrip(system, plan, score.SpaceMm).Under());
        return score with { Systems = [.. systems] };
    }

    /// <summary>The signs that occur in the strips of a measured exercise, for a key.</summary>
    public static ImmutableArray<MoveKind> KindsIn(Measurement measured) =>
        [.. StripMoves.Of(measured.Realization).SelectMany(move => move.Kinds()).Distinct().Order()];
}
