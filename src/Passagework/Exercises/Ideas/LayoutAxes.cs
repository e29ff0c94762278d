using System.Collections.Immutable;
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
            yield return new AxisChoice($"box {AxisText.Of(number)}", $"box {AxisText.Of(number)}");
        }

        yield return new AxisChoice("joined", "two boxes joined");
        yield return new AxisChoice("one-side", "one side of a box");
        yield return new AxisChoice("per-string", "the same count on each string");
        yield return new AxisChoice("diagonal", "diagonal");
        yield return new AxisChoice("one-string", "one string");
        yield return new AxisChoice("string-pair", "two strings");
        yield return new AxisChoice("chain", "boxes up the neck");
        yield return new AxisChoice("open", "open position");
        yield return new AxisChoice(Places, "chosen places");
    }

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
