using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>When the notes of a line are played, in pulses, swing included.</summary>
internal sealed class LineTimes
{
    private readonly Line _line;
    private readonly Fraction[] _onsets;
    private readonly double _perPulse;

    public LineTimes(Line line)
    {
        _line = line;
        var rhythm = line.Recipe.Rhythm;
        var swung = !rhythm.Swing.IsStraight;
        _onsets = new Fraction[line.Notes.Length];
        for (var i = 0; i < _onsets.Length; i++)
        {
            var written = line.Notes[i].Onset;
            _onsets[i] = swung ? rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat) : written;
        }

        _perPulse = 1 / rhythm.Pulse.ToDouble();
        Gaps = new double[Math.Max(0, _onsets.Length - 1)];
        for (var i = 0; i < Gaps.Length; i++)
        {
            Gaps[i] = Between(i, i + 1);
        }
    }

    /// <summary>Time from each note to the next, in pulses.</summary>
    public double[] Gaps { get; }

    /// <summary>Time between two notes, in pulses.</summary>
    public double Between(int earlier, int later) =>
        (_onsets[later] - _onsets[earlier]).ToDouble() * _perPulse;

    /// <summary>Whether a rest of at least a felt beat ends where the note begins.</summary>
    public bool RestsBefore(int note) =>
        note > 0 && _line.Notes[note].Onset - _line.Notes[note - 1].End >= _line.Recipe.Rhythm.Meter.Beat;

    /// <summary>The middle value, the mean of the middle two when their number is even; 1 when there is none.</summary>
    public static double Median(IReadOnlyCollection<double> values)
    {
        if (values.Count == 0)
        {
            return 1;
        }

        var sorted = values.Order().ToArray();
        var half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
