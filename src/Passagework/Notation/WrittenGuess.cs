using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Notation;

/// <summary>What an imported line tells about its rhythm and its picking where nothing is written.</summary>
internal static class WrittenGuess
{
    private const int UsualNotesPerBeat = 4;

    /// <summary>The most common length, when a beat is 1 to 8 of them.</summary>
    public static int NotesPerBeat(IEnumerable<WrittenEntry> entries, Meter meter)
    {
        var common = entries
            .Where(entry => !entry.IsRest)
            .GroupBy(entry => entry.Duration)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key)
            .First()
            .Key;
        var count = meter.Beat / common;
        return count.IsWhole && count <= Fraction.Of(8) && count >= Fraction.One
            ? (int)count.Floor()
            : UsualNotesPerBeat;
    }

    /// <summary>The plectrum unless only fingers are written; both together are hybrid.</summary>
    public static PickingPlan Picking(IEnumerable<Lock> locks)
    {
        var strokes = locks.Select(held => held.Stroke).OfType<Stroke>().ToList();
        var plucked = strokes.Exists(stroke => stroke is not (Stroke.Down or Stroke.Up));
        var picked = strokes.Exists(stroke => stroke is Stroke.Down or Stroke.Up);
        var technique = (plucked, picked) switch
        {
            (true, true) => Technique.Hybrid,
            (true, false) => Technique.Fingers,
            _ => Technique.Alternate,
        };
        return new PickingPlan
        {
            Technique = technique,
            First = strokes.Count > 0 && strokes[0] == Stroke.Up ? FirstStroke.Up : FirstStroke.Down,
        };
    }
}
