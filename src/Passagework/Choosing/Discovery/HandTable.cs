using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>The fretting hand of one player between all places of a path, worked out once.</summary>
/// <remarks>
/// A state is place × <see cref="Width"/> + number. Loads are raised
/// to the power of the windowed load, at one pulse a second, so that a line's windows are sums of look-ups.
/// </remarks>
internal sealed class HandTable
{
    /// <summary>Most places whose table is kept; wider paths are measured in full.</summary>
    public const int MostPlaces = 64;

    private const int Fingers = 5;
    private readonly FrettingMoves _moves;
    private readonly double[] _basis;

    private HandTable(PathPlaces path, FretState[][] states, FrettingMoves moves, HandPulse pulse)
    {
        (_moves, _basis, Pulse) = (moves, pulse.Basis, pulse);
        Arcs = FretArcs.Of(Array.ConvertAll(states, each => each.Length));
        (FingerOf, PositionOf) = (new int[Places * Width], new int[Places * Width]);
        (Milliseconds, Raised) = (new double[Arcs.Costs.Length], new double[Arcs.Costs.Length]);
        Together = new double[Arcs.Costs.Length];
        Returns = new double[Fingers * Places * Places];
        Fill(path, states);
    }

    /// <summary>What the solver of fingerings knows.</summary>
    public FretArcs Arcs { get; }

    /// <summary>Different places.</summary>
    public int Places => Arcs.Places;

    /// <summary>States of a place, filled up to whole vectors.</summary>
    public int Width => Arcs.Width;

    /// <summary>The finger of each state.</summary>
    public int[] FingerOf { get; }

    /// <summary>The hand's position of each state.</summary>
    public int[] PositionOf { get; }

    /// <summary>Demand of each arc; row per earlier state.</summary>
    public double[] Milliseconds { get; }

    /// <summary>Its raised load; row per earlier state.</summary>
    public double[] Raised { get; }

    /// <summary>The raised load of the hands' meeting; row per earlier state.</summary>
    public double[] Together { get; }

    /// <summary>Raised load of a finger that comes back, a pulse later: finger × places² + from × places + to.</summary>
    public double[] Returns { get; }

    /// <summary>The time and power in which loads are raised.</summary>
    public HandPulse Pulse { get; }

    /// <summary>The table; a fault where the player has no way to fret a note.</summary>
    /// <param name="path">The places.</param>
    /// <param name="line">A line over all of them, which tells the states.</param>
    /// <param name="player">Whose hand.</param>
    public static Outcome<HandTable> Of(PathPlaces path, Line line, Player player)
    {
        var moves = new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize);
        return FretLayers
            .Build(line, player)
            .Then<HandTable>(layers =>
            {
                var states = new FretState[path.Count][];
                foreach (var note in line.Notes)
                {
                    var number = Array.IndexOf(path.Places, note.Place!.Value);
                    states[number] = layers.States(layers.LayerOfNote[note.Index]);
                }

                return new HandTable(path, states, moves, HandPulse.Of(line, player));
            });
    }

    private void Fill(PathPlaces path, FretState[][] states)
    {
        var costs = new FretCosts(_moves, _basis);
        for (var from = 0; from < Places; from++)
        {
            for (var i = 0; i < Arcs.Counts[from]; i++)
            {
                var state = states[from][i];
                var at = (from * Width) + i;
                (FingerOf[at], PositionOf[at]) = (state.Finger, state.Position);
                (Arcs.StartCosts[at], Arcs.StartTies[at]) = (FretCosts.Preference(state), costs.TieOf(state));
            }

            for (var to = 0; to < Places; to++)
            {
                FillArcs(costs, states, from, to);
                FillReturns(path, from, to);
            }
        }
    }

    private void FillArcs(FretCosts costs, FretState[][] states, int from, int to)
    {
        var step = costs.Between(states[from], states[to], (_, _) => Reach.Struck);
        var start = Arcs.Between(from, to);
        for (var i = 0; i < step.From; i++)
        {
            for (var j = 0; j < step.To; j++)
            {
                var arc = (i * step.To) + j;
                var byLater = start + (j * Width) + i;
                Arcs.Costs[byLater] = step.Costs[arc] + FretCosts.Preference(states[to][j]);
                Arcs.Ties[byLater] = step.Ties[arc];
                FillLoads(start + (i * Width) + j, states[from][i], states[to][j]);
            }
        }
    }

    private void FillLoads(int at, FretState from, FretState to)
    {
        if (_moves.Between(from, to, Reach.Struck) is not { } demand)
        {
            return;
        }

        Milliseconds[at] = demand.At(_basis);
        Raised[at] = Pulse.Raise(Milliseconds[at]);
        if (_moves.Action(from, to, Reach.Struck) is { IsNone: false })
        {
            var meeting = LineDemands.Meeting(from.Place.String == to.Place.String);
            Together[at] = Pulse.Raise(meeting.At(_basis));
        }
    }

    private void FillReturns(PathPlaces path, int from, int to)
    {
        var fretted = !path.Places[from].IsOpen && !path.Places[to].IsOpen;
        for (var finger = 1; fretted && finger < Fingers; finger++)
        {
            var demand = _moves.Return(finger, path.Places[from], path.Places[to]);
            Returns[(((finger * Places) + from) * Places) + to] = Pulse.Raise(demand.At(_basis));
        }
    }
}
