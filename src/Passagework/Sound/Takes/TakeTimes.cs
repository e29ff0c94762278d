using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Sound.Takes;

/// <summary>When each note of a take is struck, and what lies between moved along.</summary>
internal sealed class TakeTimes
{
    /// <summary>Spread is cut at this share of the way to the nearer neighbour.</summary>
    private const double MostShare = 0.42;

    /// <summary>Strokes stay this far apart, or half their way where that is less.</summary>
    private const double LeastApart = 0.025;
    private const double LeastShare = 0.5;

    /// <summary>A rake into the first note finds room.</summary>
    private const double Earliest = 0.1;

    private readonly ImmutableArray<TakeNote> _notes;
    private readonly double[] _strokes;

    public TakeTimes(ImmutableArray<TakeNote> notes, TakePlan plan, TakeChance chance)
    {
        _notes = notes;
        _strokes = new double[notes.Length];
        for (var i = 0; i < notes.Length; i++)
        {
            var note = notes[i];
            var limit = MostShare * Math.Min(note.Room.Before, note.Room.After);
            var spread = plan.SpreadMs / 1000 * chance.Normal(TakeDraw.Spread, i);
            var wanted = note.Seconds + (LateMs(note, plan) / 1000) + Math.Clamp(spread, -limit, limit);
            var least =
                i == 0 ? Earliest : _strokes[i - 1] + Math.Min(LeastApart, LeastShare * note.Room.Before);
            _strokes[i] = Math.Max(wanted, least);
        }
    }

    /// <summary>When a note is struck, in seconds.</summary>
    public double Of(TakeNote note) => _strokes[note.Number];

    /// <summary>Where a time of the performance comes to lie: evenly between the strokes around it.</summary>
    public double At(double seconds)
    {
        var next = FirstAfter(seconds);
        if (next == 0 || next == _notes.Length)
        {
            var end = Math.Min(next, _notes.Length - 1);
            return seconds + (_strokes[end] - _notes[end].Seconds);
        }

        var (from, to) = (_notes[next - 1].Seconds, _notes[next].Seconds);
        var share = (seconds - from) / (to - from);
        return _strokes[next - 1] + (share * (_strokes[next] - _strokes[next - 1]));
    }

    private int FirstAfter(double seconds)
    {
        var (low, high) = (0, _notes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _notes[middle].Seconds > seconds ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static double LateMs(TakeNote note, TakePlan plan)
    {
        var place = note.Played.Note.InGroup ?? int.MaxValue;
        var crossing = Math.Abs(note.Crossing) switch
        {
            0 => 0,
            1 => plan.StringChangeMs,
            _ => plan.StringSkipMs,
        };
        return crossing
            + (note.Played.Stroke == Stroke.Up ? plan.UpStrokeMs : 0)
            + (note.Shifted ? plan.ShiftMs : 0)
            + (place < plan.ByPlaceMs.Length ? plan.ByPlaceMs[place] : 0);
    }
}
