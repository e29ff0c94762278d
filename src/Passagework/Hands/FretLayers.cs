using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Hands;

/// <summary>The ways in which each note of a line may be fretted; equal notes share one layer.</summary>
internal sealed class FretLayers
{
    private readonly Line _line;
    private readonly Fretboard _board;
    private readonly bool[] _avoided = new bool[5];
    private readonly Dictionary<int, Lock> _locks = [];
    private readonly Dictionary<(Place? Place, int Midi, string Chord), int> _numbers = [];
    private readonly ChordLayer _chords;
    private readonly List<FretState[]> _layers = [];
    private readonly Lazy<int[]> _positions;

    private FretLayers(Line line, Player player)
    {
        _line = line;
        _board = line.Recipe.Instrument;
        foreach (var finger in player.Avoid.Concat(line.Recipe.Fretting.Avoid))
        {
            _avoided[finger] = true;
        }

        foreach (var locked in line.Recipe.Fretting.Locks)
        {
            _locks[locked.Note] = locked;
        }

        _positions = new Lazy<int[]>(Positions);
        _chords = new ChordLayer(_board, player.HandSize);
    }

    /// <summary>The number of each note's layer.</summary>
    public int[] LayerOfNote { get; private set; } = [];

    /// <summary>The states of a layer, in the order in which ties are broken: finger, position, string.</summary>
    public FretState[] States(int layer) => _layers[layer];

    /// <summary>How many different layers there are.</summary>
    public int Count => _layers.Count;

    /// <summary>Builds the layers; refuses a note that has no way at all.</summary>
    public static Outcome<FretLayers> Build(Line line, Player player)
    {
        var layers = new FretLayers(line, player);
        layers.LayerOfNote = new int[line.Notes.Length];
        foreach (var note in line.Notes)
        {
            var number = layers.NumberOf(note);
            if (layers._layers[number].Length == 0)
            {
                return layers.NoWay(note);
            }

            layers.LayerOfNote[note.Index] = number;
        }

        return layers;
    }

    /// <summary>Where a note may be played: its place, the string it is locked to, or anywhere its pitch lies.</summary>
    private IEnumerable<Place> PlacesOf(LineNote note)
    {
        var locked = _locks.GetValueOrDefault(note.Index)?.String;
        if (note.Place is { } place && (locked is null || locked == place.String))
        {
            return [place];
        }

        return _board.PlacesOf(note.Midi).Where(other => locked is null || other.String == locked);
    }

    // An open string leaves the hand where it is, so it may stand wherever some fretted note needs it; where nothing
    // is fretted at all it stands in position 1.
    private int[] Positions()
    {
        var seen = new SortedSet<int> { 1 };
        var singles = _line.Notes.Where(note => note.With.IsEmpty).SelectMany(PlacesOf);
        foreach (var place in singles.Distinct().Where(place => !place.IsOpen))
        {
            seen.UnionWith(Fretted(place, null).Select(state => state.Position));
        }

        foreach (var chord in _line.Notes.Where(note => !note.With.IsEmpty))
        {
            seen.UnionWith(_chords.States(chord, PlacesOf(chord), () => []).Select(state => state.Position));
        }

        seen.UnionWith(_locks.Values.Select(locked => locked.Position ?? 1));
        return [.. seen];
    }

    private int NumberOf(LineNote note)
    {
        var locked = _locks.GetValueOrDefault(note.Index);
        var chord = note.With.IsEmpty
            ? ""
            : string.Join(' ', note.With.Select(tone => (tone.Place, tone.Midi)));
        var key = (note.Place, note.Midi, chord);
        if (locked is null && _numbers.TryGetValue(key, out var number))
        {
            return number;
        }

        var all = note.With.IsEmpty
            ? PlacesOf(note).SelectMany(place => place.IsOpen ? Open(place) : Fretted(place, locked))
            : Chords(note, locked);
        var states = all.Where(state => Honours(state, locked))
            .OrderBy(state => (state.Finger, state.Position, state.Place.String))
            .ToArray();
        _layers.Add(states);
        if (locked is null)
        {
            _numbers[key] = _layers.Count - 1;
        }

        return _layers.Count - 1;
    }

    private static bool Honours(FretState state, Lock? locked) =>
        locked is null
        || (
            (locked.Finger ?? state.Finger) == state.Finger
            && (locked.Position ?? state.Position) == state.Position
        );

    private IEnumerable<FretState> Chords(LineNote note, Lock? locked) =>
        _chords
            .States(note, PlacesOf(note), () => _positions.Value)
            .Where(state =>
                state.Form!.Held.All(tone => !_avoided[tone.Finger] || locked?.Finger == tone.Finger)
            );

    private IEnumerable<FretState> Open(Place place) =>
        _positions.Value.Select(position => new FretState(place, 0, position));

    private IEnumerable<FretState> Fretted(Place place, Lock? locked)
    {
        for (var finger = 1; finger <= 4; finger++)
        {
            if (_avoided[finger] && locked?.Finger != finger)
            {
                continue;
            }

            var furthest = finger == 1 ? 0 : 1;
            for (var deviation = -1; deviation <= furthest; deviation++)
            {
                var position = place.Fret - (finger - 1) - deviation;
                if (position >= 1)
                {
                    yield return new FretState(place, finger, position);
                }
            }
        }
    }

    private Fault NoWay(LineNote note)
    {
        var where = LinePlace.Of(_line, note.Index);
        if (_locks.TryGetValue(note.Index, out var locked))
        {
            return new Fault(
                $"the lock on note {note.Index} ({note.Place?.ToString() ?? note.Pitch.ToString()}) leaves no way to play it",
                where,
                $"change its {LockedParts(locked)}"
            );
        }

        if (!note.With.IsEmpty)
        {
            return new Fault(
                $"no hand can hold {Names(note)} at once",
                where,
                "leave out a tone, place it on another string or allow another finger"
            );
        }

        return PlacesOf(note).Any()
            ? new Fault("every finger is avoided", where, "leave at least one of the fingers 1 to 4")
            : new Fault(
                $"{note.Pitch} is not on this instrument",
                where,
                $"a pitch from {Lowest()} to {Highest()}"
            );
    }

    private static string Names(LineNote note) =>
        string.Join(" + ", note.Tones.Select(tone => tone.Place?.ToString() ?? tone.Pitch.ToString()));

    private static string LockedParts(Lock locked) =>
        string.Join(
            " or ",
            new[]
            {
                locked.Finger is null ? null : "finger",
                locked.String is null ? null : "string",
                locked.Position is null ? null : "position",
            }.Where(part => part is not null)
        );

    private string Lowest() =>
        "MIDI " + Strings().Min(s => _board.MidiAt(Place.At(s, 0))).ToString(Invariant);

    private string Highest() =>
        "MIDI " + Strings().Max(s => _board.MidiAt(Place.At(s, _board.PlayableFrets))).ToString(Invariant);

    private IEnumerable<int> Strings() => Enumerable.Range(1, _board.Tuning.StringCount);

    private static System.Globalization.CultureInfo Invariant =>
        System.Globalization.CultureInfo.InvariantCulture;
}
