using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Engraving.Pictures;

/// <summary>What lies on the neck, in words.</summary>
public static class LayoutWords
{
    /// <summary>Such as <c>A minor pentatonic, box 1</c>, as it sounds with a capo; empty for a line that names neither notes nor layout.</summary>
    public static string Of(Recipe recipe, RoomStyle style = default)
    {
        var set = recipe.Notes?.Transposed(recipe.Instrument.Capo) is { } notes
            ? $"{style.Of(notes.Root)} {notes.Scale ?? "with chosen notes"}"
            : "";
        var laid = recipe.Layout is { } layout ? Laid(layout, recipe, style) : "";
        return string.Join(", ", new[] { set, laid }.Where(part => part.Length > 0));
    }

    private static string Laid(Layout layout, Recipe recipe, RoomStyle style)
    {
        string Box(int number) => style.Box(number, recipe.Notes);
        return layout switch
        {
            Layout.Box box => $"box {Box(box.Number)}",
            Layout.PerString even => $"{NumberWords.Of(even.Count)} notes on each string",
            Layout.Joined joined => $"boxes {Box(joined.First)} and {Box(joined.Second)} joined",
            Layout.Diagonal => "climbing across the strings",
            Layout.OneString one => $"along string {one.String}",
            Layout.StringPair pair => $"{Boxes(pair.Boxes.Select(Box))} on {Strings(pair.Strings)}",
            Layout.Chain chain => $"{Boxes(chain.Boxes.Select(Box))} on {Strings(chain.Strings)}",
            Layout.OneSide side => $"the {(side.High ? "higher" : "lower")} side of box {Box(side.Number)}",
            Layout.OpenPosition => "open position",
            _ => "",
        };
    }

    private static string Boxes(IEnumerable<string> numbers)
    {
        var all = numbers.ToList();
        return all.Count == 1 ? $"box {all[0]}" : $"boxes {NumberWords.List(all)}";
    }

    private static string Strings(IEnumerable<int> strings)
    {
        var all = strings.Select(number => $"{number}").ToList();
        return all.Count == 1 ? $"string {all[0]}" : $"strings {NumberWords.List(all)}";
    }
}
