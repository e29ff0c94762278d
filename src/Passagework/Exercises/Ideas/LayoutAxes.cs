using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>How the notes lie on the neck: the kind of layout, and what each kind leaves open.</summary>
internal static class LayoutAxes
{
    private const string Places = "places";

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("written", "line") { Text = recipe => recipe.Written is { } written ? Written(written) : null },
        new("layout", "layout")
        {
            Text = recipe => recipe.Layout is { } layout ? KeyOf(layout) : null,
            Choices = Kinds,
            Said = Said,
            Set = Set,
        },
        .. LayoutParts.Rules,
        .. RunParts.Rules,
    ];

    /// <summary>The kind as it is chosen; each box is a choice of its own.</summary>
    private static string KeyOf(Layout layout) =>
        layout switch
        {
            Layout.Box box => $"box {AxisText.Of(box.Number)}",
            Layout.PerString => "per-string",
            Layout.Joined => "joined",
            Layout.Diagonal => "diagonal",
            Layout.OneString => "one-string",
            Layout.StringPair => "string-pair",
            Layout.Chain => "chain",
            Layout.OneSide => "one-side",
            Layout.OpenPosition => "open",
            Layout.Given => Places,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static IEnumerable<AxisChoice> Kinds(Recipe recipe)
    {
        foreach (var number in Enumerable.Range(1, recipe.Notes?.Semitones.Length ?? 0))
        {
            yield return Choice($"box {AxisText.Of(number)}");
        }

        yield return Choice("joined");
        yield return Choice("one-side");
        yield return Choice("per-string");
        yield return Choice("diagonal");
        yield return Choice("one-string");
        yield return Choice("string-pair");
        yield return Choice("chain");
        yield return Choice("open");
        yield return Choice(Places);
    }

    private static AxisChoice Choice(string key) => new(key, key);

    private static string Said(Recipe recipe, RoomStyle style, string key) =>
        key switch
        {
            "joined" => "two boxes joined",
            "one-side" => "one side of a box",
            "per-string" => "the same count on each string",
            "diagonal" => "diagonal",
            "one-string" => "one string",
            "string-pair" => "two strings",
            "chain" => "boxes up the neck",
            "open" => "open position",
            Places => "chosen places",
            _ =>
                $"box {style.Box(int.Parse(key["box ".Length..], CultureInfo.InvariantCulture), recipe.Notes)}",
        };

    private static Outcome<Recipe> Set(Recipe recipe, string text)
    {
        var laid = text.Split(' ') switch
        {
            ["box", var number] => RecipeChange
                .Layout(recipe, "box")
                .Then(boxed => RecipeChange.Box(boxed, number)),
            [Places] => AsPlaces(recipe),
            _ => RecipeChange.Layout(recipe, text).Then(RunParts.OnNeck),
        };
        return laid.Then(LayoutFit.Whole);
    }

    // The places where the notes lie now, each of which can then be changed.
    private static Outcome<Recipe> AsPlaces(Recipe recipe) =>
        recipe is { Layout: { } layout, Notes: { } notes }
            ? LayoutPlanner
                .Lay(layout, notes, recipe.Instrument)
                .Then<Recipe>(path => recipe with { Layout = new Layout.Given(path.Places) })
            : new Fault("a written line has no layout to change");

    private static string Written(WrittenLine written)
    {
        var notes = written.Entries.Count(entry => !entry.IsRest);
        return $"{NumberWords.Of(notes, "note")} as written";
    }
}
