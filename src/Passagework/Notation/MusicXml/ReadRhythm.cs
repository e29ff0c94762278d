using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Metre, pulses, swing and tempo of an imported line.</summary>
internal sealed class ReadRhythm(ReadScore score, ReadPart part)
{
    private const double FastestBpm = 1000;

    public RhythmPlan Of(IReadOnlyList<WrittenEntry> entries, Fraction start)
    {
        if (part.Meter is null)
        {
            Remark("no metre written, read as 4/4");
        }

        var meter = part.Meter ?? default;
        var told = score.Facts.TryGetValue(ScoreHeaderXml.PulsesField, out var text)
            ? ReadNumbers.Whole(text)
            : null;
        var plan = new RhythmPlan
        {
            Meter = meter,
            NotesPerBeat = told is >= 1 and <= 8 ? told.Value : WrittenGuess.NotesPerBeat(entries, meter),
            StartOffset = start,
            TempoBpm = TempoOf(meter),
        };
        return WithSwing(plan);
    }

    private double? TempoOf(Meter meter)
    {
        var beat = meter.Beat.ToDouble();
        var tempo = part switch
        {
            { Mark: { } mark } when mark.Beat == meter.Beat => mark.Bpm,
            { QuarterTempo: { } quarters } => quarters / (4 * beat),
            { Mark: { } mark } => mark.Bpm * mark.Beat.ToDouble() / beat,
            _ => (double?)null,
        };
        if (tempo > FastestBpm)
        {
            Remark("tempo above 1000 beats a minute left out");
            return null;
        }

        return tempo;
    }

    private RhythmPlan WithSwing(RhythmPlan plan)
    {
        if (part.Swing is not { } told)
        {
            return plan;
        }

        var pulses = plan.Meter.Beat / told.Pulse;
        if (
            !(pulses == Fraction.Of(2) || pulses == Fraction.Of(4)) || !Swing.TryOf(told.Share, out var swing)
        )
        {
            Remark("swing of another kind left out");
            return plan;
        }

        return swing.IsStraight ? plan : plan with { Swing = swing, NotesPerBeat = (int)pulses.Floor() };
    }

    private void Remark(string text) => part.Remarks.Add(text, part.SpotAt(0, Fraction.Zero));
}
