using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Sheets;

/// <summary>The words of a sheet as far as they follow from a measured exercise; a teacher changes what should differ.</summary>
public static class SheetDefaults
{
    private const int LeastTempo = 20;
    private const int MostTempo = 400;

    // Where no hand is asked anything there is no ceiling: a walking pace.
    private const double PlainCeiling = 80;

    // A step of about six in a hundred, in whole pairs of beats a minute; teachers take 2 to 8 (common practice).
    private const double StepShare = 0.06;

    // Practice blocks of five minutes; two a day, one where a hand is strained (chosen by us).
    private const int UsualMinutes = 10;
    private const int StrainedMinutes = 5;

    private const string PainRule =
        "If it hurts, tingles or goes numb, stop this exercise today. "
        + "If it comes back or lasts, see a doctor or physiotherapist before going on.";

    private const string PauseRule =
        "Begin with two or three easy minutes; pause for five after twenty-five at most.";

    private const string VolumeRule = "With an amplifier or headphones, keep it soft enough to talk over.";

    /// <summary>What an exercise is called on paper.</summary>
    internal static string TitleOf(Recipe recipe) => recipe.Title ?? recipe.Id ?? "An exercise";

    /// <summary>The words of one exercise, measured for the student's level.</summary>
    /// <param name="measurement">The exercise.</param>
    /// <param name="style">Where the room's plans start and aim.</param>
    public static SheetContent Of(Measurement measurement, RoomStyle style = default)
    {
        var recipe = measurement.Realization.Line.Recipe;
        var (start, goal) = Tempos(measurement, style.Plan);
        var strain = Strain.Of(measurement);
        var minutes = strain is null ? UsualMinutes : StrainedMinutes;
        return new SheetContent
        {
            Title = TitleOf(recipe),
            Purpose = recipe.Purpose is { Length: > 0 } purpose
                ? NumberWords.Sentence(purpose.TrimEnd('.')) + "."
                : "",
            Tempo = TempoWords.Of(start, goal, recipe.Rhythm),
            GoUp = GoUp(start),
            HowLong = $"{minutes} minutes, on 5 days of the week",
            Strokes = StrokeWords.Of(recipe.Picking),
            ListenFor = ListenWords.Of(measurement),
            WhenEasy = EasierWords.Of(measurement),
            Variation = OtherStroke.Of(measurement.Realization),
            Caution = string.Join(
                " ",
                new[] { PauseRule, strain ?? "", PainRule, VolumeRule }.Where(text => text.Length > 0)
            ),
        };
    }

    /// <summary>Start and goal in felt beats a minute; the tempo that the recipe asks for is the goal.</summary>
    private static (int Start, int Goal) Tempos(Measurement measurement, PlanShares plan)
    {
        var ceiling = measurement.Bpm ?? PlainCeiling;
        var goal = measurement.Realization.Line.Recipe.Rhythm.TempoBpm ?? ceiling * plan.Goal / 100;
        var start = Math.Min(ceiling * plan.Start / 100, goal * plan.Start / plan.Goal);
        return (Even(start), Even(goal));
    }

    private static int Even(double tempo) =>
        Math.Clamp(2 * (int)Math.Round(tempo / 2, MidpointRounding.ToEven), LeastTempo, MostTempo);

    private static string GoUp(int start)
    {
        var step = Math.Clamp(2 * (int)Math.Round(start * StepShare / 2), 2, 8);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"by {step} when three in a row are clean; never more than {step} in a day"
        );
    }
}
