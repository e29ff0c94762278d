using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Studio.Features.Pieces;

/// <summary>From which level on a line is in reach at its written tempo; measures as few levels as it takes.</summary>
internal sealed class ReachedLevels(Line line)
{
    /// <summary>The level that is measured first.</summary>
    public const int Middle = 2;

    private readonly Dictionary<int, Measurement?> _measured = [];

    /// <summary>The line measured at a level; null when it can't be played there.</summary>
    public Measurement? At(int level)
    {
        if (!_measured.TryGetValue(level, out var measured))
        {
            measured = Measurer.Measure(line, Player.At(level)).TryGet(out var one, out _) ? one : null;
            _measured.Add(level, measured);
        }

        return measured;
    }

    /// <summary>The name of the first level that reaches a tempo, in words; a higher level is never slower.</summary>
    public string FirstThatReaches(double? bpm)
    {
        if (bpm is null)
        {
            return "no tempo is written";
        }

        var (from, below) = (0, Player.LevelNames.Length);
        while (from < below)
        {
            var middle = (from + below) / 2;
            if (Reaches(middle, bpm.Value))
                below = middle;
            else
                from = middle + 1;
        }

        return from == Player.LevelNames.Length ? "above every level" : Player.LevelNames[from];
    }

    private bool Reaches(int level, double bpm) =>
        At(level) is { } one && (one.Bpm is null || one.Bpm >= bpm);
}
