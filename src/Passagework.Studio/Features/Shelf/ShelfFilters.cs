using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Studio.Features.Shelf;

/// <summary>The filters of the shelf.</summary>
internal static class ShelfFilters
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Titles = new(() =>
        Library.Families.ToDictionary(
            family => family,
            family => CandidateSource.OfFamily(family).OrThrow().Title
        )
    );

    // After the titles, which the families' choices show.
    private static readonly ImmutableArray<ShelfFilter> Fixed = [Family(), Technique(), Speed(), SitsIn()];

    /// <summary>All of them; the last holds the labels that are in use.</summary>
    public static IReadOnlyList<ShelfFilter> Of(IEnumerable<string> labels)
    {
        var choices = labels
            .Distinct()
            .Order(StringComparer.CurrentCultureIgnoreCase)
            .Select(label => new ShelfChoice(label, label, exercise => exercise.Labels.Contains(label)))
            .ToList();
        return choices.Count == 0
            ? Fixed
            : Fixed.Add(new ShelfFilter("label", "label", "any label", choices));
    }

    /// <summary>What a family is called.</summary>
    public static string TitleOf(string family) => Titles.Value[family];

    private static ShelfFilter Family() =>
        new(
            "family",
            "family",
            "every family",
            [
                .. Library.Families.Select(family => new ShelfChoice(
                    family,
                    TitleOf(family),
                    exercise => exercise.Family == family
                )),
            ]
        );

    private static ShelfFilter Technique() =>
        new(
            "technique",
            "technique",
            "any technique",
            [
                .. RecipeWords.Techniques.Words.Select(word => new ShelfChoice(
                    word,
                    word.Replace('-', ' '),
                    exercise => RecipeWords.Techniques.Of(exercise.Recipe.Picking.Technique) == word
                )),
            ]
        );

    private static ShelfFilter Speed() =>
        new(
            "time",
            "top speed",
            "any top speed",
            [
                Between("below-4", "below 4 notes a second", 0, 4),
                Between("4-to-6", "4 to 6 notes a second", 4, 6),
                Between("6-to-9", "6 to 9 notes a second", 6, 9),
                Between("above-9", "9 notes a second or more", 9, double.PositiveInfinity),
            ]
        );

    private static ShelfChoice Between(string key, string words, double from, double below) =>
        new(
            key,
            words,
            exercise => exercise.Figures.NotesPerSecond is { } speed && speed >= from && speed < below
        );

    private static ShelfFilter SitsIn() =>
        new(
            "sits-in",
            "feel",
            "any feel",
            [
                .. Feel
                    .Usual.Select(feel => (Feel: feel, Name: FeelNames.Of(feel, default)))
                    .Select(named => new ShelfChoice(
                        named.Name.Replace(' ', '-'),
                        $"even in {named.Name}",
                        exercise => exercise.Figures.SitsIn.Contains(named.Feel)
                    )),
            ]
        );
}
