using Passagework.Instrument;
using Path = Passagework.Instrument.Path;

namespace Passagework.Choosing.Discovery;

/// <summary>A path as numbers: a place that it visits twice has one number.</summary>
internal sealed class PathPlaces
{
    private readonly Dictionary<Place, int[]> _indices;

    public PathPlaces(Path path, Fretboard board)
    {
        Places = [.. path.Places.Distinct()];
        var numbers = Places.Select((place, number) => (place, number)).ToDictionary();
        NumberAt = [.. path.Places.Select(place => numbers[place])];
        Keys = Array.ConvertAll(Places, board.MidiAt);
        _indices = path
            .Places.Select((place, index) => (place, index))
            .GroupBy(entry => entry.place, entry => entry.index)
            .ToDictionary(group => group.Key, group => group.ToArray());
    }

    /// <summary>The number of the place at each path index.</summary>
    public int[] NumberAt { get; }

    /// <summary>Each place once.</summary>
    public Place[] Places { get; }

    /// <summary>The MIDI key of each place.</summary>
    public int[] Keys { get; }

    /// <summary>Notes on the path.</summary>
    public int Length => NumberAt.Length;

    /// <summary>Different places.</summary>
    public int Count => Places.Length;

    /// <summary>Whether a place comes more than once.</summary>
    public bool VisitsTwice => Count < Length;

    /// <summary>The path indices of a place; none where the path does not visit it.</summary>
    public int[] IndicesOf(Place place) => _indices.GetValueOrDefault(place, []);
}
