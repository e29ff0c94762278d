using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Engraving.Sheets;

/// <summary>What to change when an exercise has become easy: two variations, each a sentence.</summary>
internal static class EasierWords
{
    public static string Of(Measurement measurement)
    {
        var recipe = measurement.Realization.Line.Recipe;
        return $"{Stroke(recipe.Picking)} {Accent(recipe, measurement.Fit)}";
    }

    private static string Stroke(PickingPlan plan) =>
        (plan.Technique, plan.First) switch
        {
            (Technique.Alternate or Technique.Economy, FirstStroke.Down) =>
                "Begin with an up-stroke and change nothing else.",
            (Technique.Alternate or Technique.Economy, FirstStroke.Up) =>
                "Begin with a down-stroke and change nothing else.",
            (Technique.AllDown, _) => "Play it with up-strokes only.",
            (Technique.AllUp, _) => "Play it with down-strokes only.",
            (Technique.Fingers, _) when plan.Fingers != FingerOrder.Pima =>
                "Begin with the other finger and change nothing else.",
            _ => "Play it with closed eyes and change nothing else.",
        };

    private static string Accent(Recipe recipe, GroupFit? fit)
    {
        var againstBeat = fit is { BeatsToRealign: > 1 } && recipe.Cell is { Offsets.Length: > 1 };
        return againstBeat
            ? "Then lean on the first of every beat instead of the first of every group."
            : "Then play it softly, as evenly as before.";
    }
}
