using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Hands.Explaining;

/// <summary>Puts the words of both hands beside their times.</summary>
internal sealed class MoveExplainer(Measurement measured, double bpm)
{
    private readonly MoveTimes _times = MoveTimes.Of(measured.Realization, bpm);
    private readonly PickingWords _picking = new(measured);
    private readonly double[] _basis = measured.Player.Parameters.Basis;

    public MoveExplanation Explain(int note)
    {
        var demands = measured.Planned.Demands;
        return new MoveExplanation
        {
            Note = note,
            Fretting = note == 0 ? First() : Fretting(note),
            Picking = Picking(note),
            Together = Together(note),
            FrettingUses = note == 0 ? [] : ParameterUse.Of(demands.Fretting.DemandOf(note - 1), _basis),
            PickingUses = note == 0 ? [] : ParameterUse.Of(demands.Picking.DemandOf(note - 1), _basis),
        };
    }

    private MoveSentence First()
    {
        var note = measured.Realization.Notes[0];
        var fingers = note.With.IsEmpty
            ? FrettingWords.Finger(note.Finger)
            : $"{note.Tones.Count()} notes at once";
        return new MoveSentence(
            PlaceWords.Of(note),
            $", {fingers}: the line begins here, so no move leads to it",
            "",
            IsAssumed: false,
            "."
        );
    }

    private MoveSentence Fretting(int note)
    {
        var (from, to) = (measured.Realization.Notes[note - 1], measured.Realization.Notes[note]);
        var (lead, how) = (PlaceWords.Move(from, to), FrettingWords.Of(from, to));
        var demand = measured.Demands[note];
        return demand.FrettingMs is > 0 and { } ms
            ? new MoveSentence(
                lead,
                how + ": ",
                Figure(ms),
                demand.FrettingIsAssumed,
                Allowed(ms, _times.Fretting[note])
            )
            : new MoveSentence(lead, how + ": no time needed", "", IsAssumed: false, ".");
    }

    private MoveSentence Picking(int note)
    {
        var how = _picking.Of(note);
        var demand = measured.Demands[note];
        if (demand.PickingMs is not (> 0 and { } ms))
        {
            return new MoveSentence("", how, "", IsAssumed: false, ".");
        }

        // Where notes without a stroke lie between, or the rhythm gives the hands different times, it has time of its own.
        var hasOwnTime = _times.Picking[note] != _times.Fretting[note];
        var rest = hasOwnTime || ms > _times.Picking[note] ? Since(ms, _times.Picking[note]) : ".";
        return new MoveSentence("", how + ": ", Figure(ms), demand.PickingIsAssumed, rest);
    }

    private MoveSentence Together(int note)
    {
        if (measured.Demands[note].TogetherMs is not (> 0 and { } ms))
        {
            return new MoveSentence("", "No finger has to meet a stroke", "", IsAssumed: false, ".");
        }

        return new MoveSentence(
            "",
            "Finger and stroke meet nine times in ten when there are ",
            Figure(ms),
            Basis.IsAssumed(Basis.Synchrony),
            "."
        );
    }

    private string Allowed(double ms, double? available) =>
        available is { } time
            ? $"{(ms > time ? ", more than" : " of")} the {Figure(time)} that {Tempo()} allow."
            : ".";

    private static string Since(double ms, double? available) =>
        available is { } time
            ? $"{(ms > time ? ", more than" : " of")} the {Figure(time)} since the last stroke."
            : ".";

    private string Tempo() => $"{bpm.ToString("0.#", CultureInfo.InvariantCulture)} beats a minute";

    private static string Figure(double ms) => $"{ms.ToString("0", CultureInfo.InvariantCulture)} ms";
}
