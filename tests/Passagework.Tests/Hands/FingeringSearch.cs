using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands;

/// <summary>Tries every fingering of a short line, in the order finger, position, string at each note.</summary>
internal sealed class FingeringSearch(Line line, Player player)
{
    private readonly Fretboard _board = line.Recipe.Instrument;
    private readonly FrettingMoves _moves = new(Geometry.Of(line.Recipe.Instrument), player.HandSize);
    private readonly double[] _basis = player.Parameters.Basis;
    private readonly ChordMoves _chords = new(
        new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize),
        player.Parameters.Basis
    );
    private readonly LineTimes _times = new(line);
    private readonly List<FretState> _chosen = [];
    private readonly HashSet<int> _useful = [];
    private readonly List<FretState[]> _states = [];

    // What a move costs does not depend on how the hand came there: worked out once for each pair of states.
    private readonly Dictionary<(int Note, FretState From, FretState To), double?> _costs = [];
    private readonly double _reference = LineTimes.Median(new LineTimes(line).Gaps);
    private readonly Articulation _articulation = new(line, new LineTimes(line));

    public List<Way> Found { get; } = [];

    public void Run()
    {
        _useful.UnionWith(UsefulPositions());
        _states.AddRange(Enumerable.Range(0, line.Notes.Length).Select(note => States(note).ToArray()));
        foreach (var state in _states[0])
        {
            _chosen.Add(state);
            var strain = ChordSearch.Strain(state);
            Extend(new Way([], 0.02 * strain, 0, 0, strain, Effort(state)));
            _chosen.Clear();
        }
    }

    private void Extend(Way way)
    {
        var k = _chosen.Count - 1;
        if (k == line.Notes.Length - 1)
        {
            Found.Add(way with { States = [.. _chosen] });
            return;
        }

        foreach (var next in _states[k + 1])
        {
            if (Cost(k, next) is not { } move)
            {
                continue;
            }

            var deviation = ChordSearch.Strain(next);
            var shift = _chosen[k].Position == next.Position ? 0 : 1;
            _chosen.Add(next);
            Extend(
                new Way(
                    [],
                    way.Cost + move + (0.02 * deviation),
                    Math.Max(way.Worst, move),
                    way.Shifts + shift,
                    way.Deviation + deviation,
                    way.Effort + Effort(next)
                )
            );
            _chosen.RemoveAt(k + 1);
        }
    }

    private double? Cost(int k, FretState next)
    {
        if (!_costs.TryGetValue((k, _chosen[k], next), out var cost))
        {
            cost = Move(k, next) is { } demand
                ? Math.Pow(demand.At(_basis) / player.Parameters["A"] * (_reference / _times.Gaps[k]), 4)
                : null;
            _costs[(k, _chosen[k], next)] = cost;
        }

        return cost;
    }

    private Demand? Move(int k, FretState next)
    {
        var from = _chosen[k];
        if (next.Form is not null)
        {
            return _chords.Between(from, next, Reach.Struck);
        }

        var before = ChordMoves.ToneOn(from, next.Place.String).Place;
        var reach = _articulation.Of(_articulation.WishOf(k + 1), before, next.Place);
        return from.Form is null ? _moves.Between(from, next, reach) : _chords.Between(from, next, reach);
    }

    // In tenths of a millisecond, as the planner counts it.
    private long Effort(FretState state) => (long)((state.Form?.EffortMs(_basis) ?? 0) * 10);

    private IEnumerable<FretState> States(int index)
    {
        var locked = LockOf(index);
        var states = line.Notes[index].With.IsEmpty
            ? Places(index).SelectMany(place => States(place, locked))
            : Chords(index, locked, _useful);
        return states.OrderBy(state => (state.Finger, state.Position, state.Place.String));
    }

    private IEnumerable<FretState> Chords(int index, Lock? locked, IReadOnlyCollection<int> openPositions) =>
        new ChordSearch(_board, player.HandSize)
            .States(line.Notes[index], Places(index), openPositions)
            .Where(state =>
                (locked?.Finger ?? state.Finger) == state.Finger
                && (locked?.Position ?? state.Position) == state.Position
                && state.Form!.Tones.All(tone => !IsAvoided(tone.Finger) || locked?.Finger == tone.Finger)
            );

    private Lock? LockOf(int index) =>
        line.Recipe.Fretting.Locks.FirstOrDefault(entry => entry.Note == index);

    private IEnumerable<Place> Places(int index)
    {
        var note = line.Notes[index];
        var only = LockOf(index)?.String;
        return note.Place is { } place && (only is null || only == place.String)
            ? [place]
            : _board.PlacesOf(note.Midi).Where(other => only is null || only == other.String);
    }

    private IEnumerable<FretState> States(Place place, Lock? locked) =>
        from finger in place.IsOpen ? [0] : new[] { 1, 2, 3, 4 }
        from position in Enumerable.Range(1, 26)
        let state = new FretState(place, finger, position)
        where finger > 0 || _useful.Contains(position)
        where finger == 0 || state.Deviation is -1 or 0 || (state.Deviation == 1 && finger > 1)
        where !IsAvoided(finger) || locked?.Finger == finger
        where (locked?.Finger ?? finger) == finger && (locked?.Position ?? position) == position
        select state;

    // Positions that no fretted note could need only multiply equal fingerings of open strings.
    private HashSet<int> UsefulPositions()
    {
        var useful = line.Recipe.Fretting.Locks.Select(locked => locked.Position ?? 1).Append(1).ToHashSet();
        foreach (
            var place in Enumerable
                .Range(0, line.Notes.Length)
                .Where(index => line.Notes[index].With.IsEmpty)
                .SelectMany(Places)
                .Where(place => !place.IsOpen)
        )
        {
            useful.UnionWith(States(place, null).Select(state => state.Position));
        }

        foreach (var chord in line.Notes.Where(note => !note.With.IsEmpty))
        {
            var search = new ChordSearch(_board, player.HandSize);
            useful.UnionWith(search.States(chord, Places(chord.Index), []).Select(state => state.Position));
        }

        return useful;
    }

    private bool IsAvoided(int finger) =>
        finger > 0 && (player.Avoid.Contains(finger) || line.Recipe.Fretting.Avoid.Contains(finger));

    internal sealed record Way(
        FretState[] States,
        double Cost,
        double Worst,
        int Shifts,
        int Deviation,
        long Effort
    );
}
