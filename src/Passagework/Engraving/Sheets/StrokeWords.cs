using Passagework.Exercises;

namespace Passagework.Engraving.Sheets;

/// <summary>What the picking hand does, as a student is told.</summary>
internal static class StrokeWords
{
    public static string Of(PickingPlan plan) =>
        plan.Technique switch
        {
            Technique.Alternate => $"strictly down and up{Begin(plan.First)}",
            Technique.Metric =>
                "down on the beat and half-way, up between; the hand goes on over silent notes",
            Technique.AllDown => "down-strokes only",
            Technique.AllUp => "up-strokes only",
            Technique.Economy =>
                "down and up on a string; over to the next string the stroke goes on the same way",
            Technique.Sweep => "one stroke runs on over neighbouring strings; else down and up",
            Technique.Rake => "drag through muted strings into the note, as printed",
            Technique.Hybrid => "plectrum and fingers, as printed",
            Technique.Legato => "a stroke where the string changes; all else is slurred",
            Technique.Fingers => Fingers(plan.Fingers),
            _ => "as printed",
        };

    private static string Begin(FirstStroke first) =>
        first switch
        {
            FirstStroke.Down => ", beginning down",
            FirstStroke.Up => ", beginning up",
            _ => "; the first as printed",
        };

    private static string Fingers(FingerOrder order) =>
        order switch
        {
            FingerOrder.IndexMiddle => "index and middle finger strictly in turn",
            FingerOrder.MiddleRing => "middle and ring finger strictly in turn",
            FingerOrder.ThumbIndex => "thumb and index finger strictly in turn",
            _ => "thumb and three fingers, as printed",
        };
}
