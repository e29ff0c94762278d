using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>Finds cells whose line an earlier candidate plays already, without remembering lines. Not for two threads at once.</summary>
/// <remarks>
/// The first notes of a line are its first cell. So a line of one variant can be that of another one only by the cell that
/// these notes make on the other path; that cell's line is written and compared. Where a path visits places twice, each of
/// the ways to read the notes is tried.
/// </remarks>
internal sealed class CellDoubles
{
    private readonly CellVariant[] _variants;
    private readonly CellSpace _space;
    private readonly CellNumbers _numbers;
    private readonly int[] _indices;
    private readonly Place[] _line;
    private readonly int[] _cell;

    public CellDoubles(CellVariant[] variants, CellSpace space)
    {
        (_variants, _space, _numbers) = (variants, space, CellNumbers.Of(space));
        var most = variants.Max(variant => variant.Walker.MostNotes(space.Length));
        (_indices, _line) = (new int[most], new Place[most]);
        _cell = new int[space.Length];
    }

    /// <summary>Whether an earlier candidate plays the line of a cell that fits its path.</summary>
    public bool Has(int variant, ReadOnlySpan<int> offsets)
    {
        var count = Write(variant, offsets);
        for (var at = 0; at < count; at++)
        {
            var path = _variants[variant].Path;
            _line[at] = path.Places[path.NumberAt[_indices[at]]];
        }

        var number = _numbers.Of(variant, offsets);
        for (var other = 0; other <= variant; other++)
        {
            if ((other < variant || _variants[other].Path.VisitsTwice) && Reads(other, (count, number), 0, 0))
            {
                return true;
            }
        }

        return false;
    }

    private int Write(int variant, ReadOnlySpan<int> offsets) =>
        _variants[variant].Walker.Write(offsets, _indices);

    // Reads the notes of the first cell on another path, from a note on.
    private bool Reads(int other, (int Count, long Number) line, int note, int start)
    {
        if (note == _cell.Length)
        {
            return Plays(other, line);
        }

        var mirrored = _variants[other].Walker.IsMirrored;
        foreach (var index in _variants[other].Path.IndicesOf(_line[note]))
        {
            var first = note == 0 ? index : start;
            _cell[note] = mirrored ? first - index : index - first;
            var near = note == 0 || Math.Abs(_cell[note] - _cell[note - 1]) <= _space.Reach;
            if (near && Reads(other, line, note + 1, first))
            {
                return true;
            }
        }

        return false;
    }

    private bool Plays(int other, (int Count, long Number) line)
    {
        if (_numbers.Of(other, _cell) >= line.Number || Write(other, _cell) != line.Count)
        {
            return false;
        }

        var path = _variants[other].Path;
        for (var at = 0; at < line.Count; at++)
        {
            if (path.Places[path.NumberAt[_indices[at]]] != _line[at])
            {
                return false;
            }
        }

        return true;
    }
}
