using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Repertoire;

/// <summary>Keys and times of a line, cut into phrases where it rests for a felt beat or longer (the cut is assumed).</summary>
/// <remarks>No figure reaches over such a rest. Of a chord the highest tone counts. Times are as written, unswung.</remarks>
internal sealed class Melody
{
    private readonly int[] _keys;
    private readonly Fraction[] _onsets;
    private readonly int[] _phraseEnd;

    public Melody(Line line)
    {
        _keys = [.. line.Notes.Select(note => note.Midi)];
        _onsets = [.. line.Notes.Select(note => note.Onset)];
        _phraseEnd = new int[_keys.Length];
        var beat = line.Recipe.Rhythm.Meter.Beat;
        for (var i = _keys.Length - 1; i >= 0; i--)
        {
            var last = i == _keys.Length - 1 || line.Notes[i + 1].Onset - line.Notes[i].End >= beat;
            _phraseEnd[i] = last ? i + 1 : _phraseEnd[i + 1];
        }
    }

    /// <summary>Number of notes.</summary>
    public int Count => _keys.Length;

    /// <summary>The MIDI key of a note.</summary>
    public int Key(int note) => _keys[note];

    /// <summary>Whether a figure of so many notes begins at a note.</summary>
    public bool Holds(int start, int notes) => start + notes <= _phraseEnd[start];

    /// <summary>The figure of so many notes that begins at a note which holds it.</summary>
    public CellShape Shape(int start, int notes) =>
        CellShape.Of(_keys.AsSpan(start, notes), _onsets.AsSpan(start, notes));

    /// <summary>All figures of so many notes, in order.</summary>
    public IEnumerable<CellShape> Shapes(int notes) =>
        Enumerable.Range(0, Count).Where(start => Holds(start, notes)).Select(start => Shape(start, notes));

    /// <summary>How many figures of so many notes there are.</summary>
    public int Windows(int notes) => Enumerable.Range(0, Count).Count(start => Holds(start, notes));
}
