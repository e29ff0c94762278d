using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>Which way a line and its cells go, and how far they reach.</summary>
/// <param name="CellRises">Whether the first cell is played as written, not mirrored.</param>
/// <param name="LineRises">Whether each next cell lies further up the layout, in the first half.</param>
/// <param name="TurnsBack">Whether a second half goes back.</param>
/// <param name="ReachesEnd">Whether the first half comes to the very end of the layout, or of the part used.</param>
/// <param name="FillsAll">Whether one cell covers all of it.</param>
internal sealed record WayOfLine(
    bool CellRises,
    bool LineRises,
    bool TurnsBack,
    bool ReachesEnd,
    bool FillsAll
)
{
    /// <summary>Whether there is room for a single cell only, so that nothing moves.</summary>
    public bool HasOneCell { get; private init; }

    /// <summary>The way of a recipe that has a layout and a cell.</summary>
    public static WayOfLine Of(Recipe recipe)
    {
        var movement = recipe.Movement;
        var rises = movement.Direction is Direction.Up or Direction.UpAndDown;
        var room = Room(recipe);
        var step = Math.Abs(movement.Step);
        return new WayOfLine(
            rises,
            movement.Step < 0 ? !rises : rises,
            movement.Direction is Direction.UpAndDown or Direction.DownAndUp,
            step > 0 && room is { } left && left % step == 0,
            room == 0
        )
        {
            HasOneCell = step > 0 && room < step,
        };
    }

    // Notes that the cell leaves free in the part of the layout that is used; null where that can't be laid out.
    private static int? Room(Recipe recipe)
    {
        if (
            recipe is not { Layout: { } layout, Notes: { } notes, Cell: { } cell }
            || !LayoutPlanner.Lay(layout, notes, recipe.Instrument).TryGet(out var path, out _)
            || !PathRange.Of(path, recipe.Movement).TryGet(out var range, out _)
        )
        {
            return null;
        }

        var span = Math.Max(0, cell.Offsets.Max() ?? 0) - Math.Min(0, cell.Offsets.Min() ?? 0) + 1;
        return range.Length - span;
    }
}
