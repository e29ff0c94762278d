using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>Strokes of a technique that leaves no choice once the first is given: what follows what, and what it asks.</summary>
/// <remarks>Actions are 0 down and 1 up; an arc is action × 64 + string from × 8 + string to, strings from 0.</remarks>
internal sealed class StrokeTable
{
    private const int Strings = 8;
    private const int Arcs = 2 * Strings * Strings;
    private static readonly Stroke[] Actions = [Stroke.Down, Stroke.Up];

    private StrokeTable(int start) => Start = start;

    /// <summary>The first action.</summary>
    public int Start { get; }

    /// <summary>The action after each arc.</summary>
    public int[] Next { get; } = new int[Arcs];

    /// <summary>What the stroke at the end of each arc asks, in ms, for each level.</summary>
    public double[][] Milliseconds { get; private init; } = [];

    /// <summary>The number of an arc.</summary>
    public static int Arc(int action, int from, int to) => (((action * Strings) + from) * Strings) + to;

    /// <summary>Whether a technique leaves no choice and strikes every note.</summary>
    public static bool Knows(Technique technique) =>
        technique
            is Technique.Alternate
                or Technique.Metric
                or Technique.AllDown
                or Technique.AllUp
                or Technique.Economy
                or Technique.Sweep;

    /// <summary>The table of one first stroke for a few players with the same way of clearing the strings.</summary>
    public static StrokeTable Of(CellSpace space, FirstStroke first, IReadOnlyList<Player> players)
    {
        var count = space.Instrument.Tuning.StringCount;
        var moves = new PlectrumMoves(Geometry.Of(space.Instrument).PickingSpacingMm, players[0].Clear);
        var stroke = first == FirstStroke.Up ? Stroke.Up : Stroke.Down;
        var rules = StrokeRules.For(space.Picking, stroke, moves, count);
        var start = Array.FindIndex(Actions, action => rules.MayBegin(new StrokeState(action, 1, 1), 0));
        var table = new StrokeTable(start) { Milliseconds = [.. players.Select(_ => new double[Arcs])] };
        for (var arc = 0; arc < Arcs; arc++)
        {
            var (action, from, to) = (arc / Strings / Strings, arc / Strings % Strings, arc % Strings);
            if (from < count && to < count)
            {
                table.Fill(arc, rules, new StrokeState(Actions[action], from + 1, from + 1), players);
            }
        }

        return table;
    }

    private void Fill(int arc, StrokeRules rules, StrokeState from, IReadOnlyList<Player> players)
    {
        // A grid counts pulses from an even one, on which the first stroke falls.
        var slot = from.Action == Actions[Start] ? 1 : 2;
        var step = new StrokeStep(1, slot, Restarts: false);
        var next = rules.States((arc % Strings) + 1).Single(to => rules.MayFollow(from, to, step));
        Next[arc] = Array.IndexOf(Actions, next.Action);
        var demand = rules.Between(from, next, step);
        for (var level = 0; level < players.Count; level++)
        {
            Milliseconds[level][arc] = demand.At(players[level].Parameters.Basis);
        }
    }
}
