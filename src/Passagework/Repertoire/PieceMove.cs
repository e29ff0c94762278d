using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Repertoire;

/// <summary>One move of a piece, from a note to the next.</summary>
/// <param name="Note">Index of the note that it leads to.</param>
/// <param name="At">Where that note stands.</param>
/// <param name="Class">Its kind.</param>
/// <param name="From">Where the hand comes from.</param>
/// <param name="To">Where it goes.</param>
public sealed record PieceMove(int Note, BarBeat At, MoveClass Class, Place From, Place To)
{
    /// <summary>The hand that has most to do in the time there is.</summary>
    public Limit Hand { get; private init; }

    /// <summary>The least time that this hand needs, ms.</summary>
    public double Milliseconds { get; private init; }

    /// <summary>That time over the time there is, at one pulse a second; it grows with the tempo.</summary>
    public double Load { get; private init; }

    /// <summary>The time there is for it, in pulses; 0 where no hand has anything to do.</summary>
    public double Pulses => Load > 0 ? Milliseconds / (1000 * Load) : 0;

    internal static ImmutableArray<PieceMove> AllOf(
        PlannedLine planned,
        Realization realization,
        Player player
    )
    {
        var basis = player.Parameters.Basis;
        var demands = planned.Demands;
        var hands = new[]
        {
            new HandLoads(Limit.Fretting, demands.Fretting, basis),
            new HandLoads(Limit.Picking, demands.Picking, basis),
            new HandLoads(Limit.Together, demands.Together, basis),
        };
        return
        [
            .. MoveClass.In(realization).Select((kind, k) => Of(realization, kind, k, BusiestOf(hands, k))),
        ];
    }

    private static PieceMove Of(Realization realization, MoveClass kind, int k, HandLoads busiest)
    {
        var (from, to) = (realization.Notes[k], realization.Notes[k + 1]);
        var at = BarBeat.Of(to.Note.Onset, realization.Line.Recipe.Rhythm.Meter);
        return new PieceMove(k + 1, at, kind, from.Place, to.Place)
        {
            Hand = busiest.Hand,
            Milliseconds = busiest.Milliseconds[k],
            Load = busiest.Loads[k],
        };
    }

    // The first where two are equal.
    private static HandLoads BusiestOf(HandLoads[] hands, int k)
    {
        var busiest = hands[0];
        foreach (var hand in hands)
        {
            busiest = hand.Loads[k] > busiest.Loads[k] ? hand : busiest;
        }

        return busiest;
    }

    private sealed class HandLoads(Limit hand, LoadList list, double[] basis)
    {
        public Limit Hand { get; } = hand;

        public double[] Milliseconds { get; } = list.Milliseconds(basis);

        public double[] Loads { get; } = list.Loads(basis);
    }
}
