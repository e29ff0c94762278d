using Passagework.Foundation;
using Passagework.Instrument;
using Path = Passagework.Instrument.Path;

namespace Passagework.Exercises;

/// <summary>The part of a path that a movement uses.</summary>
internal sealed class PathRange
{
    private readonly Path _path;
    private readonly int _first;
    private readonly int _last;

    private PathRange(Path path, int first, int last) => (_path, _first, _last) = (path, first, last);

    /// <summary>Number of notes.</summary>
    public int Length => _last - _first + 1;

    /// <summary>Path indices of the part.</summary>
    public IEnumerable<int> Indices => Enumerable.Range(_first, Length);

    /// <summary>The part that a movement names; both ends must lie on the path.</summary>
    public static Outcome<PathRange> Of(Path path, Movement movement)
    {
        var first = movement.From ?? 0;
        var last = movement.To ?? (path.Length - 1);
        if (first < path.Length && last < path.Length && first <= last)
        {
            return new PathRange(path, first, last);
        }

        var (value, field) = last >= path.Length ? (last, "to") : (first, "from");
        return new Fault(
            $"there is no note {value} in the layout",
            $"$.movement.{field}",
            $"it has notes 0 to {path.Length - 1}"
        );
    }

    /// <summary>The place at a path index.</summary>
    public Place PlaceAt(int index) => _path.Places[index];

    /// <summary>Path index of the n-th note of the part, counted from its beginning or from its end.</summary>
    public int Index(int number, bool mirrored) => mirrored ? _last - number : _first + number;
}
