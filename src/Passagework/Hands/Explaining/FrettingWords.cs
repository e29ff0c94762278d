using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;

namespace Passagework.Hands.Explaining;

/// <summary>What the fretting hand does from one note to the next, in words.</summary>
internal static class FrettingWords
{
    /// <summary>Such as <c>, first to little finger over a skipped string</c>.</summary>
    public static string Of(PlayedNote from, PlayedNote to) =>
        $", {(from.With.IsEmpty && to.With.IsEmpty ? Single(from, to) : Chord(from, to))}{Shift(from, to)}{Slurred(from, to)}";

    /// <summary>The finger of a note: first finger, open string.</summary>
    public static string Finger(int finger) =>
        finger == 0 ? "open string" : $"{FingerNames.Of(finger)} finger";

    private static string Single(PlayedNote from, PlayedNote to)
    {
        var across = PlaceWords.Across(from.Place.String, to.Place.String);
        return (from.Finger, to.Finger) switch
        {
            _ when from.Place == to.Place => to.Finger == 0
                ? "the open string again"
                : $"the {Finger(to.Finger)} stays where it is",
            (> 0, 0) when from.Place.String == to.Place.String =>
                $"the {Finger(from.Finger)} lifts off to the open string",
            (_, 0) => $"to the open string{across}",
            (0, _) => $"from the open string to the {Finger(to.Finger)}{across}",
            var (one, other) when one == other => SameFinger(from, to),
            var (one, other) => $"{FingerNames.Of(one)} to {Finger(other)}{across}",
        };
    }

    private static string SameFinger(PlayedNote from, PlayedNote to)
    {
        var finger = Finger(to.Finger);
        var apart = Math.Abs(from.Place.String - to.Place.String);
        return (apart, from.Place.Fret == to.Place.Fret) switch
        {
            (1, true) => $"the {finger} rolls over to the next string",
            (0, _) when to.Stroke == Stroke.None => $"the {finger} slides along the string",
            _ =>
                $"the {finger} leaves and comes down again{PlaceWords.Across(from.Place.String, to.Place.String)}",
        };
    }

    private static string Chord(PlayedNote from, PlayedNote to)
    {
        var fingers = to
            .Tones.Where(tone => tone.Finger > 0)
            .Select(tone => tone.Finger)
            .Distinct()
            .Order()
            .ToList();
        var held = fingers.Count == 0 ? "no finger" : Fingers(fingers);
        return to.With.IsEmpty
            ? $"from {NumberWords.Of(from.Tones.Count())} notes at once to the {Finger(to.Finger)}"
            : $"to {NumberWords.Of(to.Tones.Count())} notes at once, held by {held}";
    }

    private static string Fingers(List<int> fingers) =>
        $"the {NumberWords.List([.. fingers.Select(FingerNames.Of)])} finger{(fingers.Count == 1 ? "" : "s")}";

    private static string Shift(PlayedNote from, PlayedNote to)
    {
        var frets = to.Position - from.Position;
        return frets == 0
            ? ""
            : $", the hand moving {(frets > 0 ? "up" : "down")} {NumberWords.Of(Math.Abs(frets), "fret")}";
    }

    private static string Slurred(PlayedNote from, PlayedNote to)
    {
        var isSlid = from.Finger == to.Finger && from.Place.String == to.Place.String;
        return to.Stroke == Stroke.None && !isSlid ? $", {SlurWords.Of(from, to)}" : "";
    }
}
