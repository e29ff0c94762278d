using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>
/// What the move to each note asks of both hands, note by note: the fretting hand above a middle line, the picking hand
/// below it, against the time there is at a tempo.
/// </summary>
/// <example>
/// <c>HandsStrip.Of(Measurer.Measure(recipe, player), tempoBpm: 60).Then(strip => strip.Under(score))</c>
/// </example>
public sealed class HandsStrip
{
    private const double FastestBpm = 1000;
    private readonly StripPlan _plan;

    private HandsStrip(StripPlan plan) => _plan = plan;

    /// <summary>The signs that occur in it.</summary>
    public ImmutableArray<MoveKind> Kinds => _plan.Kinds;

    /// <summary>The strip of a measured exercise.</summary>
    /// <param name="measured">What the notes ask.</param>
    /// <param name="tempoBpm">Felt beats a minute, above 0 and at most 1000, as in a recipe.</param>
    public static Outcome<HandsStrip> Of(Measurement measured, double tempoBpm) =>
        tempoBpm is > 0 and <= FastestBpm
            ? new HandsStrip(StripPlan.Of(measured, tempoBpm))
            : new Fault(
                System.FormattableString.Invariant($"{tempoBpm} is no tempo"),
                "tempo",
                "above 0, at most 1000 beats a minute"
            );

    /// <summary>The score with the strip under every system.</summary>
    /// <param name="score">The systems of the same notes.</param>
    /// <param name="look">How it is drawn; as on paper when not given.</param>
    public Score Under(Score score, StripLook? look = null) =>
        score with
        {
            Systems =
            [
                .. score.Systems.Select(system =>
                    new SystemStrip(system, _plan, score.SpaceMm, look ?? StripLook.Paper).Under()
                ),
            ],
        };

    /// <summary>The signs that occur, each with its meaning.</summary>
    internal StripKey Signs => new(_plan);

    /// <summary>How to read it, in rows of a width: only what occurs is explained.</summary>
    public Figure Key(double widthMm) => Signs.Draw(widthMm);
}
