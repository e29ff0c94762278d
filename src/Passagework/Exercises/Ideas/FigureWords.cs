using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>A cell in words, as the beginning of a sentence.</summary>
/// <param name="recipe">The exercise; it has a cell.</param>
/// <param name="way">Which way the line goes.</param>
/// <param name="style">How the room calls things.</param>
internal sealed class FigureWords(Recipe recipe, WayOfLine way, RoomStyle style)
{
    private readonly Cell _cell = recipe.Cell!;
    private readonly CellFigure _figure = CellFigure.Of(recipe.Cell!.Offsets);

    // Of chosen places and of one side of a box the next is not the neighbour in the scale.
    private readonly bool _hasNeighbours = recipe.Layout is not (Layout.Given or Layout.OneSide);
    private readonly string _scale = recipe.Notes is { } notes ? ScaleWords.Of(notes, style) : "the notes";

    /// <summary>Such as <c>five neighbouring notes of the A minor pentatonic</c>, with what is held or silent in it.</summary>
    public string Phrase() => RestBefore() + Notes() + Held() + RestAfter();

    private string Notes()
    {
        var number = NumberWords.Of(_figure.Count);
        return _figure.Kind switch
        {
            FigureKind.One => $"one note of {_scale}",
            FigureKind.Run => Run(number),
            FigureKind.OutAndBack =>
                $"{Neighbours(number)}{Against()} and {NumberWords.Of(_figure.Times)} back again",
            FigureKind.Repeated when _figure.Count == 1 =>
                $"one note of {_scale}, {NumberWords.Times(_figure.Times)}",
            FigureKind.Repeated => $"{Run(number)}, each {NumberWords.Times(_figure.Times)}",
            FigureKind.Turns =>
                $"two {Neighbouring()}notes of {_scale} in turn, {NumberWords.Times(_figure.Times)}",
            FigureKind.Pedal =>
                $"one note of {_scale} in turn with each of the {number} {(Rises() ? "above" : "below")} it",
            _ => $"the notes {Spelled()} of {_scale}, counted {Counted()}",
        };
    }

    private string Counted() =>
        (recipe.Layout is Layout.Given, way.CellRises) switch
        {
            (true, true) => "from the first place on",
            (true, false) => "from the last place back",
            (false, true) => "upward",
            (false, false) => "downward",
        };

    private string Run(string number)
    {
        var left = Math.Abs(_figure.Interval) - 1;
        if (left == 0)
        {
            return Neighbours(number) + Against();
        }

        var between = _figure.Count == 2 ? "between them" : "between each two";
        return $"{number} notes of {_scale} with {NumberWords.Of(left)} left out {between}{Against()}";
    }

    private string Neighbours(string number) =>
        _hasNeighbours ? $"{number} neighbouring notes of {_scale}" : $"{number} notes of {_scale} in a row";

    private string Neighbouring() => Math.Abs(_figure.Interval) == 1 && _hasNeighbours ? "neighbouring " : "";

    // Which way the figure itself goes is said only where it is not the way of the line.
    private string Against() => Rises() == way.LineRises ? "" : $", {(Rises() ? "rising" : "falling")}";

    private bool Rises() => _figure.Interval > 0 == way.CellRises;

    private string Spelled()
    {
        var lowest = Math.Min(0, _cell.Offsets.Min() ?? 0);
        return _cell
            .Offsets.Select(offset => offset is { } steps ? AxisText.Of(steps - lowest + 1) : "rest")
            .Join(" ");
    }

    private string RestBefore() =>
        _figure.Kind != FigureKind.Free && _cell.Offsets[0] is null ? "a rest and " : "";

    private string RestAfter() =>
        _figure.Kind != FigureKind.Free && _cell.Offsets[^1] is null ? ", then a rest" : "";

    // A last note that is longer than the others, which are all alike.
    private string Held()
    {
        var lengths = _cell.Durations.Where((_, entry) => _cell.Offsets[entry] is not null).ToList();
        var held =
            lengths.Count > 1 && lengths.SkipLast(1).Distinct().Count() == 1 && lengths[^1] > lengths[0];
        return held ? ", the last held" : "";
    }
}
