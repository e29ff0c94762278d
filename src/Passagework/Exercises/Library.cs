using System.Collections.Immutable;
using System.Text.Json;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>One exercise of the starting library.</summary>
/// <param name="Id">Family and form, such as <c>groups-of-five-up</c>.</param>
/// <param name="Family">Such as <c>groups-of-five</c>.</param>
/// <param name="Form">Such as <c>up</c>; empty where a family has one form without a name.</param>
/// <param name="Recipe">The idea; its values are only defaults.</param>
public sealed record LibraryExercise(string Id, string Family, string Form, Recipe Recipe);

/// <summary>The starting library: families of exercises that are common property of the trade, as recipes.</summary>
public static class Library
{
    private static readonly Lazy<ImmutableArray<LibraryExercise>> Loaded = new(() =>
        [.. Families.SelectMany(Load)]
    );

    /// <summary>The families, in the order in which they are listed for people.</summary>
    public static ImmutableArray<string> Families { get; } =
    [
        "straight",
        "groups-of-three",
        "groups-of-four",
        "groups-of-five",
        "groups-of-six",
        "groups-of-seven",
        "reversed-threes",
        "out-and-back-fours",
        "out-and-back-sixes",
        "every-other-note",
        "skipped-fifths",
        "skipped-fours",
        "pedal",
        "one-sided-rolls-low",
        "one-sided-rolls-high",
        "three-string-sweeps",
        "slurred-threes",
        "position-shift",
        "displaced-fours",
        "scale-thirds",
        "three-per-string-fours",
        "one-string-run",
        "first-notes",
        "diagonal",
        "two-string-loop",
        "bursts",
        "finger-orders",
        "thumb-and-fingers",
        "trill",
    ];

    /// <summary>All exercises, family by family.</summary>
    public static ImmutableArray<LibraryExercise> All => Loaded.Value;

    /// <summary>The exercise with that id; a fault suggests the id that was probably meant.</summary>
    public static Outcome<LibraryExercise> Find(string id)
    {
        if (All.FirstOrDefault(exercise => exercise.Id == id) is { } found)
        {
            return found;
        }

        if (OfFamily(id) is { IsEmpty: false } forms)
        {
            var ids = string.Join(", ", forms.Select(form => form.Id));
            return new Fault(
                $"{Quote.Short(id)} is a family of exercises",
                Right: $"one of its forms: {ids}"
            );
        }

        var near = NearestWord.Find(id, All.Select(exercise => exercise.Id).Concat(Families));
        var hint = near is null
            ? $"one of the families {string.Join(", ", Families)}"
            : $"did you mean '{near}'?";
        return new Fault($"no exercise {Quote.Short(id)} in the library", Right: hint);
    }

    /// <summary>The forms of a family; empty when there is no such family.</summary>
    public static ImmutableArray<LibraryExercise> OfFamily(string family) =>
        [.. All.Where(exercise => exercise.Family == family)];

    private static IEnumerable<LibraryExercise> Load(string family)
    {
        var assembly = typeof(Library).Assembly;
        using var stream =
            assembly.GetManifestResourceStream($"Exercises/library/{family}.json")
            ?? throw new System.Diagnostics.UnreachableException($"The library has no file for {family}.");
        using var document = JsonDocument.Parse(stream);
        var root = new JsonCursor(document.RootElement, "$", new FirstFault());
        return [.. root.Items().Select(item => Exercise(family, item))];
    }

    private static LibraryExercise Exercise(string family, JsonCursor item)
    {
        var recipe = RecipeJson.Checked(RecipeReader.Read(item), item.Faults).OrThrow();
        var id = recipe.Id ?? family;
        var form = id.Length > family.Length ? id[(family.Length + 1)..] : "";
        return new LibraryExercise(id, family, form, recipe);
    }
}
