using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>How played times go with written ones.</summary>
/// <param name="Swing">How uneven pairs are.</param>
/// <param name="NotesPerBeat">Pulses per felt beat; null where only the written times tell.</param>
internal readonly record struct MidiFeel(Swing Swing, int? NotesPerBeat)
{
    private const int AnyPulses = 1;

    public Fraction Played(Fraction written, Meter meter) =>
        Swing.Apply(written, meter, NotesPerBeat ?? AnyPulses);

    public Fraction Written(Fraction played, Meter meter) =>
        Swing.Undo(played, meter, NotesPerBeat ?? AnyPulses);
}
