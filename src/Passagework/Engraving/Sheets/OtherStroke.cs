using Passagework.Exercises;

namespace Passagework.Engraving.Sheets;

/// <summary>The same notes with every stroke exchanged for its counterpart, which is the first variation of a sheet.</summary>
/// <remarks>Only where the exchange keeps the rule of the strokes: strict turns, or one stroke throughout.</remarks>
internal static class OtherStroke
{
    /// <summary>The variation; null where strokes cannot simply be exchanged.</summary>
    public static SheetVariation? Of(Realization played)
    {
        if (Exchange(played.Line.Recipe.Picking) is not { } pair)
        {
            return null;
        }

        var (one, other, words) = pair;
        var swapped = new Dictionary<Stroke, Stroke> { [one] = other, [other] = one };
        Stroke Swap(Stroke stroke) => swapped.GetValueOrDefault(stroke, stroke);
        var notes = played.Notes.Select(note =>
            note with
            {
                Stroke = Swap(note.Stroke),
                With = [.. note.With.Select(tone => tone with { Stroke = Swap(tone.Stroke) })],
            }
        );
        return new SheetVariation($"When this is easy: the same{words}.", played with { Notes = [.. notes] });
    }

    private static (Stroke One, Stroke Other, string Words)? Exchange(PickingPlan plan) =>
        (plan.Technique, plan.First, plan.Fingers) switch
        {
            (Technique.Alternate, FirstStroke.Down, _) => Plectrum(", begun with an up-stroke"),
            (Technique.Alternate, FirstStroke.Up, _) => Plectrum(", begun with a down-stroke"),
            (Technique.AllDown, _, _) => Plectrum(" with up-strokes only"),
            (Technique.AllUp, _, _) => Plectrum(" with down-strokes only"),
            (Technique.Fingers, _, FingerOrder.IndexMiddle) => Fingers(Stroke.Index, Stroke.Middle),
            (Technique.Fingers, _, FingerOrder.MiddleRing) => Fingers(Stroke.Middle, Stroke.Ring),
            (Technique.Fingers, _, FingerOrder.ThumbIndex) => Fingers(Stroke.Thumb, Stroke.Index),
            _ => null,
        };

    private static (Stroke, Stroke, string) Plectrum(string words) => (Stroke.Down, Stroke.Up, words);

    private static (Stroke, Stroke, string) Fingers(Stroke one, Stroke other) =>
        (one, other, ", begun with the other finger");
}
