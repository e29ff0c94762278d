using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;

namespace Passagework.Hands.Variants;

/// <summary>What a change of one thing does to the hands, in a few words.</summary>
internal static class Consequence
{
    /// <summary>The first of what is more (or, for an easier form, less) than before; null where the counts stay alike.</summary>
    public static string? Of(Measurement before, Measurement after, bool isHarder) =>
        isHarder ? More(before, after) : Less(before, after);

    private static string? More(Measurement before, Measurement after)
    {
        var (fretting, was) = (after.Fretting, before.Fretting);
        return after switch
        {
            _ when fretting.Rolls > was.Rolls => Rolls(after),
            _ when fretting.Shifts > was.Shifts => NumberWords.Of(fretting.Shifts, "shift"),
            _ when SkipStroke(after) is { } stroke && stroke != SkipStroke(before) =>
                $"every skip then follows {Named(stroke)}",
            _ when after.Picking.Skips > before.Picking.Skips =>
                $"{NumberWords.Of(after.Picking.Skips, "time")} over a string",
            _ when MostlyInside(after) && !MostlyInside(before) => "most string changes then go inside",
            _ when MostlyOutside(after) && !MostlyOutside(before) => "most string changes then go outside",
            _ => null,
        };
    }

    private static string? Less(Measurement before, Measurement after)
    {
        var (fretting, was) = (after.Fretting, before.Fretting);
        return after switch
        {
            _ when fretting.Rolls == 0 && was.Rolls > 0 => "no roll is left",
            _ when fretting.Shifts == 0 && was.Shifts > 0 => "no shift is left",
            _ when after.Picking.Skips == 0 && before.Picking.Skips > 0 => "no string is passed over",
            _ when fretting.Rolls < was.Rolls => "fewer rolls",
            _ when MostlyOutside(after) && !MostlyOutside(before) => "most string changes then go outside",
            _ => null,
        };
    }

    private static bool MostlyInside(Measurement measured) =>
        measured.Picking.Inside > measured.Picking.Outside;

    private static bool MostlyOutside(Measurement measured) =>
        measured.Picking.Outside > measured.Picking.Inside;

    // Named by the finger where one finger makes them all.
    private static string Rolls(Measurement measured)
    {
        var rolls = measured
            .Realization.Notes.Zip(measured.Realization.Notes.Skip(1))
            .Where(pair => IsRoll(pair.First, pair.Second));
        var fingers = rolls.Select(pair => pair.Second.Finger).Distinct().ToList();
        var number = NumberWords.Of(measured.Fretting.Rolls, "roll");
        return fingers.Count == 1 ? $"{number} of the {FingerNames.Of(fingers[0])} finger" : number;
    }

    private static bool IsRoll(PlayedNote from, PlayedNote to) =>
        to.Finger > 0
        && from.Finger == to.Finger
        && from.Place.Fret == to.Place.Fret
        && Math.Abs(from.Place.String - to.Place.String) == 1;

    // The stroke before every change over a string; null where there is none, or they differ.
    private static Stroke? SkipStroke(Measurement measured)
    {
        var struck = measured.Planned.Strokes.Struck;
        var before = struck
            .Zip(struck.Skip(1))
            .Where(pair => Math.Abs(pair.First.State.Exit - pair.Second.State.Entry) > 1)
            .Select(pair => pair.First.State.Action)
            .Distinct()
            .ToList();
        return before is [Stroke.Down or Stroke.Up] ? before[0] : null;
    }

    private static string Named(Stroke stroke) => stroke == Stroke.Down ? "a down-stroke" : "an up-stroke";
}
