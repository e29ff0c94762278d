using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>A title that says the idea, for an exercise that has none.</summary>
/// <example>
/// <c>Groups of five, rising</c>
/// </example>
public static class IdeaTitle
{
    private const int MostSpelled = 6;

    /// <summary>Figure and direction.</summary>
    public static string Of(Recipe recipe)
    {
        if (recipe.Written is { } written)
        {
            return $"A line of {NumberWords.Of(written.Entries.Count(entry => !entry.IsRest), "note")}";
        }

        if (recipe.Cell is not { } cell)
        {
            return "An exercise";
        }

        var way = recipe.Movement.Step == 0 ? "on the spot" : Way(WayOfLine.Of(recipe));
        var slurred = cell.Slurs.Equals(CellSlurs.None) ? "" : ", slurred";
        return NumberWords.Sentence($"{Named(cell)}{slurred}, {way}");
    }

    // The way of the line itself: a step back turns the direction round.
    private static string Way(WayOfLine way) =>
        DirectionWords.Of(
            (way.LineRises, way.TurnsBack) switch
            {
                (true, false) => Direction.Up,
                (false, false) => Direction.Down,
                (true, true) => Direction.UpAndDown,
                (false, true) => Direction.DownAndUp,
            }
        );

    private static string Named(Cell cell)
    {
        var figure = CellFigure.Of(cell.Offsets);
        var number = NumberWords.Of(figure.Count);
        return figure switch
        {
            { Kind: FigureKind.One } => "note by note",
            { Kind: FigureKind.Run, Interval: 1 } => $"groups of {number}",
            { Kind: FigureKind.Run, Interval: -1 } => $"groups of {number} turned round",
            { Kind: FigureKind.Run, Count: 2 } =>
                $"pairs with {NumberWords.Of(Math.Abs(figure.Interval) - 1)} left out",
            { Kind: FigureKind.Run } => $"groups of {number} with notes left out",
            { Kind: FigureKind.OutAndBack } => $"{number} out and {NumberWords.Of(figure.Times)} back",
            { Kind: FigureKind.Repeated } => $"each note {NumberWords.Times(figure.Times)}",
            { Kind: FigureKind.Turns } => "two notes in turn",
            { Kind: FigureKind.Pedal } => "pedal note",
            _ when cell.Offsets.Length <= MostSpelled => $"figure {CellText.Of(cell.Offsets)}",
            _ => $"a figure of {NumberWords.Of(figure.Count, "note")}",
        };
    }
}
