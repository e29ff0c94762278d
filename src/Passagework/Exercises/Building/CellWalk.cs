using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>One entry of a cell where the movement has brought it.</summary>
/// <param name="PathIndex">Index of the path note; null for a rest.</param>
/// <param name="Entry">Index in the cell as it was written.</param>
/// <param name="Group">Number of the group.</param>
/// <param name="InGroup">Place among the entries of the group that are left.</param>
internal readonly record struct CellStep(int? PathIndex, int Entry, int Group, int InGroup);

/// <summary>Moves a cell along a path.</summary>
/// <remarks>
/// Everything is worked out on a path seen in the direction of movement, so that going down is going up the reversed
/// path: the mirror.
/// </remarks>
internal sealed class CellWalk
{
    private readonly PathRange _range;
    private readonly Cell _cell;
    private readonly Movement _movement;
    private readonly int _lowest;
    private readonly int _highest;

    private CellWalk(PathRange range, Cell cell, Movement movement)
    {
        (_range, _cell, _movement) = (range, cell, movement);
        // The cell's start is a place on the path too, whether or not the cell plays it.
        _lowest = Math.Min(0, cell.Offsets.Min() ?? 0);
        _highest = Math.Max(0, cell.Offsets.Max() ?? 0);
    }

    /// <summary>All entries in order, rests too.</summary>
    public static Outcome<List<CellStep>> Steps(PathRange range, Cell cell, Movement movement)
    {
        var walk = new CellWalk(range, cell, movement);
        return walk.WhyImpossible() is { } fault ? fault : walk.AllSteps();
    }

    private int LastStart => _range.Length - 1 - _highest;

    private int FirstStart => -_lowest;

    private int CellCount =>
        _movement.Step == 0 ? 1 : ((LastStart - FirstStart) / Math.Abs(_movement.Step)) + 1;

    private Fault? WhyImpossible()
    {
        if (FirstStart > LastStart)
        {
            var span = _highest - _lowest + 1;
            return new Fault(
                $"the cell spans {span} notes and there are only {_range.Length} to move over",
                "$.cell.offsets",
                $"at most {_range.Length} notes wide, or a layout with more notes"
            );
        }

        var halves = _movement.Direction is Direction.Up or Direction.Down ? 1 : 2;
        var total = (long)CellCount * _cell.Offsets.Length * halves * _movement.Repeat;
        return total <= LengthRules.MostNotes
            ? null
            : new Fault(
                $"the line would have {total} notes and rests",
                "$.movement.repeat",
                $"at most {LengthRules.MostNotes}"
            );
    }

    private List<CellStep> AllSteps()
    {
        var groups = Whole();
        var steps = new List<CellStep>();
        var number = 0;
        for (var time = 0; time < _movement.Repeat; time++)
        {
            foreach (var group in groups)
            {
                steps.AddRange(
                    group.Select((step, inGroup) => step with { Group = number, InGroup = inGroup })
                );
                number++;
            }
        }

        return steps;
    }

    private List<ImmutableArray<CellStep>> Whole()
    {
        var upFirst = _movement.Direction is Direction.Up or Direction.UpAndDown;
        var first = Half(mirrored: !upFirst);
        if (_movement.Direction is Direction.Up or Direction.Down)
        {
            return first;
        }

        var second = Half(mirrored: upFirst);
        if (_movement.Turn == Turn.Shared && Repeats(first[^1][^1], second[0][0]))
        {
            second[0] = second[0].RemoveAt(0);
            second.RemoveAll(group => group.IsEmpty);
        }

        return [.. first, .. second];
    }

    private bool Repeats(CellStep last, CellStep next) =>
        last.PathIndex is { } before
        && next.PathIndex is { } after
        && _range.PlaceAt(before) == _range.PlaceAt(after);

    private List<ImmutableArray<CellStep>> Half(bool mirrored)
    {
        var start = _movement.Step < 0 ? LastStart : FirstStart;
        var groups = new List<ImmutableArray<CellStep>>();
        for (var cell = 0; cell < CellCount; cell++)
        {
            groups.Add(Group(start + (cell * _movement.Step), mirrored));
        }

        return groups;
    }

    private ImmutableArray<CellStep> Group(int start, bool mirrored) =>
        [
            .. _cell.Offsets.Select(
                (offset, entry) =>
                    new CellStep(
                        offset is { } steps ? _range.Index(start + steps, mirrored) : null,
                        entry,
                        0,
                        0
                    )
            ),
        ];
}
