using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>How the line ends, and how many bars it fills.</summary>
internal static class EndingAxes
{
    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("movement.ending", "ending")
        {
            Text = recipe => recipe.Written is null ? RecipeWords.Endings.Of(recipe.Movement.Ending) : null,
            Choices = _ => AxisText.Listed(RecipeWords.Endings, Words),
            Set = (recipe, text) =>
                RecipeWords
                    .Endings.Read(text)
                    .Then<Recipe>(ending =>
                        LockKeeping.Fit(
                            recipe,
                            recipe with
                            {
                                Movement = recipe.Movement with { Ending = ending },
                            }
                        )
                    ),
        },
        new("bars", "bars filled") { Text = Bars },
    ];

    private static string Words(Ending ending) =>
        ending switch
        {
            Ending.HoldLast => "hold the last note",
            Ending.HoldRoot => "hold the root",
            Ending.FillBar => "fill the bar",
            _ => "plain end",
        };

    private static string? Bars(Recipe recipe)
    {
        if (!LineBuilder.Build(recipe).TryGet(out var line, out _))
        {
            return null;
        }

        var bar = recipe.Rhythm.Meter.Bar;
        var whole = (line.End / bar).Floor();
        return line.End.Modulo(bar) == Fraction.Zero
            ? $"fills {Count(whole)}"
            : $"ends in bar {AxisText.Of((int)whole + 1)}";
    }

    private static string Count(long bars) => bars == 1 ? "1 bar" : $"{AxisText.Of((int)bars)} bars";
}
