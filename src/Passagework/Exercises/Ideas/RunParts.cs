using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>What layouts that lie at given places leave open: where they begin and how they go on.</summary>
internal static class RunParts
{
    private const int OneOctave = 12;
    private static readonly ImmutableArray<string> Patterns = ["2 3", "3 2", "3 3 2", "2 4", "4 2", "3 4"];

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("layout.count", "notes on each string")
        {
            Text = recipe => recipe.Layout is Layout.PerString run ? AxisText.Of(run.Count) : null,
            Choices = _ => AxisText.Range(2, 4, count => $"{NumberWords.Of(count, "note")} a string"),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 2, 4)
                    .Then(count =>
                        LayoutParts.Laid(recipe, layout => ((Layout.PerString)layout) with { Count = count })
                    ),
        },
        new("layout.pattern", "notes on one string after another")
        {
            Text = recipe => recipe.Layout is Layout.Diagonal run ? run.Pattern.Join(" ") : null,
            Words = recipe => Pattern(((Layout.Diagonal)recipe.Layout!).Pattern.Join(" ")),
            Choices = _ => Patterns.Select(pattern => new AxisChoice(pattern, Pattern(pattern))),
            Set = (recipe, text) =>
                TypedText
                    .Wholes(text, 1, 12)
                    .Then(pattern =>
                        LayoutParts.Laid(
                            recipe,
                            layout => ((Layout.Diagonal)layout) with { Pattern = pattern }
                        )
                    ),
            Typing = "notes on each string in turn, such as 2 3",
        },
        new("layout.from", "place of the first note")
        {
            Text = recipe => From(recipe.Layout)?.ToString(),
            Words = recipe => $"from {From(recipe.Layout)}",
            Choices = Starts,
            Set = Begun,
            Typing = "string:fret, such as 6:5",
        },
        new("layout.string", "string")
        {
            Text = recipe => recipe.Layout is Layout.OneString one ? AxisText.Of(one.String) : null,
            Choices = recipe =>
                AxisText.Range(1, recipe.Instrument.Tuning.StringCount, number => $"string {number}"),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 1, recipe.Instrument.Tuning.StringCount)
                    .Then(number =>
                        LayoutParts.Laid(
                            recipe,
                            layout => ((Layout.OneString)layout) with { String = number }
                        )
                    ),
        },
        new("layout.from", "lowest fret")
        {
            Text = recipe => recipe.Layout is Layout.OneString one ? AxisText.Of(one.From) : null,
            Choices = recipe =>
                AxisText.Range(0, recipe.Instrument.PlayableFrets - 1, fret => $"from fret {fret}"),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 0, recipe.Instrument.PlayableFrets)
                    .Then(fret =>
                        LayoutParts.Laid(
                            recipe,
                            layout => Lower((Layout.OneString)layout, fret, recipe.Instrument)
                        )
                    ),
        },
        new("layout.to", "highest fret")
        {
            Text = recipe => recipe.Layout is Layout.OneString one ? AxisText.Of(one.To) : null,
            Choices = recipe => AxisText.Range(1, recipe.Instrument.PlayableFrets, fret => $"to fret {fret}"),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 0, recipe.Instrument.PlayableFrets)
                    .Then(fret =>
                        LayoutParts.Laid(recipe, layout => ((Layout.OneString)layout) with { To = fret })
                    ),
        },
        new("layout.places", "places")
        {
            Text = recipe => recipe.Layout is Layout.Given given ? given.Places.Join(" ") : null,
            Words = recipe => Listed(((Layout.Given)recipe.Layout!).Places),
            Set = (recipe, text) =>
                TypedText
                    .Each(text, PlaceOf)
                    .Then(places => LayoutParts.Laid(recipe, _ => new Layout.Given(places))),
            Typing = "places in order, string:fret, such as 6:5 6:8 5:5",
        },
    ];

    /// <summary>A run that would leave the neck begins lower on its string, on the nearest note from which it does not.</summary>
    public static Outcome<Recipe> OnNeck(Recipe recipe)
    {
        if (recipe.Notes is not { } notes || From(recipe.Layout) is not { } from || Lies(recipe))
        {
            return recipe;
        }

        var lower = new ScaleOnNeck(notes, recipe.Instrument)
            .Between(from.String, 0, from.Fret - 1)
            .Reverse()
            .Select(spot =>
                recipe with
                {
                    Layout = Beginning(recipe.Layout!, Place.At(spot.String, spot.Fret)),
                }
            );
        return lower.FirstOrDefault(Lies) ?? recipe;
    }

    private static bool Lies(Recipe recipe) =>
        LayoutPlanner.Lay(recipe.Layout!, recipe.Notes!, recipe.Instrument) is Outcome<Instrument.Path>.Done;

    private static Layout Beginning(Layout layout, Place place) =>
        layout is Layout.PerString run
            ? run with
            {
                From = place,
            }
            : ((Layout.Diagonal)layout) with
            {
                From = place,
            };

    private static Place? From(Layout? layout) =>
        layout switch
        {
            Layout.PerString run => run.From,
            Layout.Diagonal run => run.From,
            _ => null,
        };

    // The notes of the scale on the string where it begins now.
    private static IEnumerable<AxisChoice> Starts(Recipe recipe)
    {
        if (recipe.Notes is not { } notes || From(recipe.Layout) is not { } from)
        {
            return [];
        }

        var scale = new ScaleOnNeck(notes, recipe.Instrument);
        return from.String > scale.Strings
            ? []
            : scale
                .Between(from.String, 0, scale.Frets)
                .Select(spot => Place.At(spot.String, spot.Fret))
                .Select(place => new AxisChoice($"{place}", $"from {place}"));
    }

    private static Outcome<Recipe> Begun(Recipe recipe, string text) =>
        PlaceOf(text).Then(place => LayoutParts.Laid(recipe, layout => Beginning(layout, place)));

    private static Outcome<Place> PlaceOf(string text) =>
        Place.TryParse(text, out var place)
            ? place
            : TypedText.Unread(text, "place", "string:fret such as 6:5");

    // A range that would end below its start keeps an octave.
    private static Layout.OneString Lower(Layout.OneString one, int fret, Fretboard board) =>
        one with
        {
            From = fret,
            To = one.To > fret ? one.To : Math.Min(fret + OneOctave, board.PlayableFrets),
        };

    private static string Pattern(string pattern) =>
        $"{NumberWords.List([.. pattern.Split(' ').Select(word => NumberWords.Of(int.Parse(word, System.Globalization.CultureInfo.InvariantCulture)))])} on a string";

    private static string Listed(ImmutableArray<Place> places) =>
        places.Length <= 6
            ? places.Join(" ")
            : $"{places.Take(3).Join(" ")} … {places[^1]}, {NumberWords.Of(places.Length, "place")}";
}
