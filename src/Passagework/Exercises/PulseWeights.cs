using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Exercises;

/// <summary>The metrical weight of a written time; between the pulses it is 1.</summary>
internal sealed class PulseWeights(RhythmPlan rhythm)
{
    private readonly MetricalTree _tree = MetricalTree.Of(rhythm.Meter, rhythm.NotesPerBeat);

    public int At(Fraction time)
    {
        var pulse = time.Modulo(rhythm.Meter.Bar) / rhythm.Pulse;
        return pulse.IsWhole ? _tree.Weights[(int)pulse.Floor()] : 1;
    }
}
