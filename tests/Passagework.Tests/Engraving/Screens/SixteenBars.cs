using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Screens;

/// <summary>Sixteen bars of sixteenths in groups of five: the score whose size is bounded.</summary>
internal static class SixteenBars
{
    public static Measurement Measured { get; } = Played.Measured(Recipe());

    private static Recipe Recipe()
    {
        var fives = LineBuilder.Build(Played.Recipe("groups-of-five-up")).OrThrow();
        return new Recipe
        {
            Title = "Fives over and over",
            Notes = fives.Recipe.Notes,
            Written = new WrittenLine([
                .. Enumerable
                    .Range(0, 16 * 16)
                    .Select(i => new WrittenEntry
                    {
                        Place = fives.Notes[i % fives.Notes.Length].Place,
                        Duration = Fraction.Of(1, 16),
                        Group = i / 5,
                        Accent = i % 5 == 0,
                    }),
            ]),
        };
    }
}
