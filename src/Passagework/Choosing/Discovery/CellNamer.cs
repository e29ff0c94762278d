using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>Names a find from its shape, as one would say it at a lesson; two finds of one search never share a name.</summary>
/// <example>
/// <c>five notes, up four and back one; box 2, rising, first stroke up</c>
/// </example>
public sealed class CellNamer
{
    private readonly CellSpace _space;
    private readonly RoomStyle _style;
    private readonly bool _tellsFret;

    /// <summary>Names the candidates of a space as a room calls boxes.</summary>
    public CellNamer(CellSpace space, RoomStyle style = default)
    {
        (_space, _style) = (space, style);
        _tellsFret = space.Layouts.Select(LayoutWords).Distinct().Count() < space.Layouts.Length;
    }

    /// <summary>The name of a find of that space.</summary>
    /// <exception cref="ArgumentException">It has no layout, or a cell with rests.</exception>
    public string Of(Recipe find) =>
        find is { Layout: { } layout, Cell: { } cell } && cell.Offsets.All(offset => offset is not null)
            ? Of(
                layout,
                find.Movement.Direction,
                find.Picking.First,
                [.. cell.Offsets.Select(offset => offset!.Value)]
            )
            : throw new ArgumentException("No cell of whole notes on a layout.", nameof(find));

    /// <summary>The name of a candidate.</summary>
    internal string Of(Layout layout, Direction direction, FirstStroke first, ReadOnlySpan<int> offsets)
    {
        var mirrored = direction is Direction.Down or Direction.DownAndUp;
        var number = NumberWords.Of(offsets.Length);
        var shape = Shape(offsets, mirrored ? -1 : 1);
        var accents = _space.Accents is [0]
            ? ""
            : $", accents on {NumberWords.List([.. _space.Accents.Select(Ordinal)])}";
        var step = _space.Step == 1 ? "" : $", each cell {NumberWords.Of(_space.Step)} notes on";
        var fret = _tellsFret ? $" near fret {Near(layout)}" : "";
        var strokes = _space.StrokesTold.Length == 1 ? "" : $", first stroke {StrokeWord(first)}";
        return $"{number} notes, {shape}{accents}; {LayoutWords(layout)}{fret}, {DirectionWord(direction)}{step}{strokes}";
    }

    // Moves of one kind in a row are told together: up three, a skip down, the same note again.
    private static string Shape(ReadOnlySpan<int> offsets, int sign)
    {
        var parts = new List<string>();
        for (var i = 1; i < offsets.Length; )
        {
            var step = sign * (offsets[i] - offsets[i - 1]);
            var run = 0;
            while (i < offsets.Length && sign * (offsets[i] - offsets[i - 1]) == step)
            {
                (run, i) = (run + 1, i + 1);
            }

            parts.Add(Part(step, run));
        }

        return NumberWords.List(parts);
    }

    private static string Part(int step, int run)
    {
        var way = step > 0 ? "up" : "down";
        return Math.Abs(step) switch
        {
            0 => run == 1 ? "the note again" : $"the note {NumberWords.Of(run)} times more",
            1 => $"{way} {NumberWords.Of(run)}",
            2 => run == 1 ? $"a skip {way}" : $"{NumberWords.Of(run)} skips {way}",
            3 => run == 1 ? $"a leap {way}" : $"{NumberWords.Of(run)} leaps {way}",
            var wide => run == 1
                ? $"a leap of {NumberWords.Of(wide)} {way}"
                : $"{NumberWords.Of(run)} leaps of {NumberWords.Of(wide)} {way}",
        };
    }

    private string LayoutWords(Layout layout) =>
        layout switch
        {
            Layout.Box box => $"box {Box(box.Number)}",
            Layout.PerString run => $"{NumberWords.Of(run.Count)} notes a string from {run.From}",
            Layout.Joined joined => $"boxes {Box(joined.First)} and {Box(joined.Second)} joined",
            Layout.Diagonal diagonal =>
                $"diagonal of {NumberWords.List([.. diagonal.Pattern.Select(notes => NumberWords.Of(notes))])} from {diagonal.From}",
            Layout.OneString one => $"string {Text(one.String)}, frets {Text(one.From)} to {Text(one.To)}",
            Layout.StringPair pair => $"{Strings(pair.Strings)} of box {Box(pair.Boxes[0])}",
            Layout.Chain chain =>
                $"{Strings(chain.Strings)} through boxes {NumberWords.List([.. chain.Boxes.Select(Box)])}",
            Layout.OneSide side => $"{(side.High ? "high" : "low")} side of box {Box(side.Number)}",
            Layout.OpenPosition => "open position",
            Layout.Given given => $"the places {string.Join(' ', given.Places)}",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private string Box(int number) => _style.Box(number, _space.Notes);

    private static string Near(Layout layout) =>
        layout switch
        {
            Layout.Box box => Text(box.Near),
            Layout.Joined joined => Text(joined.Near),
            Layout.StringPair pair => Text(pair.Near),
            Layout.Chain chain => Text(chain.Near),
            Layout.OneSide side => Text(side.Near),
            _ => "",
        };

    private static string Strings(ImmutableArray<int> strings) =>
        $"strings {NumberWords.List([.. strings.Select(Text)])}";

    private static string DirectionWord(Direction direction) =>
        direction switch
        {
            Direction.Up => "rising",
            Direction.Down => "falling",
            Direction.UpAndDown => "up and down",
            _ => "down and up",
        };

    private static string StrokeWord(FirstStroke first) =>
        first switch
        {
            FirstStroke.Down => "down",
            FirstStroke.Up => "up",
            _ => "as it comes easiest",
        };

    private static string Ordinal(int entry) => $"note {Text(entry + 1)}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
