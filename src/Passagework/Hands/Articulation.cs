using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>Decides for every note whether it is struck, from what is written, the technique and the places.</summary>
internal sealed class Articulation
{
    private readonly Line _line;
    private readonly LineTimes _times;
    private readonly Dictionary<int, Stroke> _lockedStrokes;
    private readonly bool _legato;
    private readonly Reach _slur;

    public Articulation(Line line, LineTimes times)
    {
        _line = line;
        _times = times;
        var recipe = line.Recipe;
        _legato = recipe.Picking.Technique == Technique.Legato;
        _slur = recipe.Fretting.SlidesAtShifts ? Reach.SlurredOrSlid : Reach.Slurred;
        _lockedStrokes = recipe
            .Fretting.Locks.Where(locked => locked.Stroke is not null)
            .ToDictionary(locked => locked.Note, locked => locked.Stroke ?? Stroke.None);
    }

    private Stroke? LockedStroke(int note) =>
        _lockedStrokes.TryGetValue(note, out var stroke) ? stroke : null;

    /// <summary>The stroke that a struck note is fixed to; a lock on no stroke fixes nothing where it can't be slurred.</summary>
    public Stroke? FixedStroke(int note) =>
        LockedStroke(note) is { } stroke and not Stroke.None ? stroke : null;

    /// <summary>What is asked of a note before its place is known.</summary>
    public Wish WishOf(int note)
    {
        var written = _line.Notes[note].Slur;
        return LockedStroke(note) switch
        {
            not (null or Stroke.None) => Wish.Strike,
            Stroke.None => Wish.Slur,
            _ when written == Slur.Slide => Wish.Slide,
            _ when written != Slur.None => Wish.Slur,
            _ when _legato && !_times.RestsBefore(note) => Wish.SlurOnOneString,
            _ => Wish.Strike,
        };
    }

    /// <summary>How a note is reached from the one before it, when the two lie at these places.</summary>
    /// <remarks>A repeated note, and an open string after another string, can only be struck.</remarks>
    public Reach Of(Wish wish, Place from, Place to)
    {
        var sameString = from.String == to.String;
        return wish switch
        {
            _ when from == to || (to.IsOpen && !sameString) => Reach.Struck,
            Wish.Slide => Reach.Slid,
            Wish.Slur => _slur,
            Wish.SlurOnOneString when sameString => _slur,
            _ => Reach.Struck,
        };
    }
}

/// <summary>What is asked of a note before its place is known.</summary>
internal enum Wish
{
    /// <summary>A stroke.</summary>
    Strike,

    /// <summary>No stroke.</summary>
    Slur,

    /// <summary>No stroke if the string stays the same.</summary>
    SlurOnOneString,

    /// <summary>A slide of the same finger.</summary>
    Slide,
}
