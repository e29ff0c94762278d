using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>A layout as it is called in a sentence: something that a line goes through.</summary>
/// <param name="Name">Such as <c>box 1</c>.</param>
/// <param name="IsPlural">Whether it is several things.</param>
internal readonly record struct LayoutName(string Name, bool IsPlural)
{
    private const int UsualNear = 5;
    private const int MostListed = 6;

    /// <summary>Of it, such as <c>its top</c> and <c>their top</c>.</summary>
    public string Its => IsPlural ? "their" : "its";

    /// <summary>The name of a recipe's layout, with the part of it that is used.</summary>
    public static LayoutName Of(Recipe recipe, RoomStyle style)
    {
        var whole = Whole(recipe, style);
        var (from, to) = (recipe.Movement.From, recipe.Movement.To);
        return (from, to) switch
        {
            (null, null) => whole,
            ({ } first, null) => new($"{whole.Name} from note {AxisText.Of(first + 1)} on", IsPlural: false),
            (null, { } last) => new(
                $"the first {NumberWords.Of(last + 1, "note")} of {whole.Name}",
                IsPlural: true
            ),
            ({ } first, { } last) => new(
                $"notes {AxisText.Of(first + 1)} to {AxisText.Of(last + 1)} of {whole.Name}",
                IsPlural: true
            ),
        };
    }

    private static LayoutName Whole(Recipe recipe, RoomStyle style)
    {
        string Box(int number) => style.Box(number, recipe.Notes);
        return recipe.Layout switch
        {
            Layout.Box box => new($"box {Box(box.Number)}{Near(box.Near)}", IsPlural: false),
            Layout.OneSide side => new(
                $"the {(side.High ? "higher" : "lower")} side of box {Box(side.Number)}{Near(side.Near)}",
                IsPlural: false
            ),
            Layout.Joined joined => new(
                $"boxes {Box(joined.First)} and {Box(joined.Second)} joined{Near(joined.Near)}",
                IsPlural: true
            ),
            Layout.PerString run => new(
                $"a run of {NumberWords.Of(run.Count, "note")} a string from {run.From}",
                IsPlural: false
            ),
            Layout.Diagonal run => new(
                $"a diagonal of {NumberWords.List([.. run.Pattern.Select(notes => NumberWords.Of(notes))])} notes a string from {run.From}",
                IsPlural: false
            ),
            Layout.OneString one => new(
                $"string {one.String} between frets {one.From} and {one.To}",
                IsPlural: false
            ),
            Layout.StringPair pair => Blocks(pair.Boxes.Select(Box), pair.Strings, pair.Near),
            Layout.Chain chain => Blocks(chain.Boxes.Select(Box), chain.Strings, chain.Near),
            Layout.Given given => new($"the places {Listed(given.Places)}", IsPlural: true),
            _ => new("open position", IsPlural: false),
        };
    }

    private static string Near(int fret) => fret == UsualNear ? "" : $" near fret {AxisText.Of(fret)}";

    private static LayoutName Blocks(IEnumerable<string> numbers, ImmutableArray<int> strings, int near)
    {
        var all = numbers.ToList();
        return new($"{Numbered.Boxes(all)} on {Numbered.Strings(strings)}{Near(near)}", all.Count > 1);
    }

    private static string Listed(ImmutableArray<Place> places) =>
        places.Length <= MostListed ? places.Join(" ") : $"{places[0]} to {places[^1]}";
}
