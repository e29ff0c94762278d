using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>A cell with other notes or lengths, and what follows from that.</summary>
internal static class CellFit
{
    private const int WidestStep = 7;

    /// <summary>
    /// Other notes. Accents and slurs stay where the cell still has them; lengths, which belong to each entry, are given
    /// up when their number changes. Cells that followed one another without a gap go on doing so.
    /// </summary>
    public static Outcome<Recipe> WithOffsets(Recipe recipe, ImmutableArray<int?> offsets)
    {
        var cell = recipe.Cell!;
        var length = offsets.Length;
        var changed = cell with
        {
            Offsets = offsets,
            Accents = Left(cell.Accents, length),
            Durations = cell.Durations.Length == length ? cell.Durations : [],
            Slurs = cell.Slurs with { Entries = Left(cell.Slurs.Entries, length) },
        };
        var movement = recipe.Movement;
        var (before, after) = (Width(cell.Offsets), Width(offsets));
        var adjoins = before > 1 && Math.Abs(movement.Step) == before && after <= WidestStep;
        return LockKeeping.Fit(
            recipe,
            recipe with
            {
                Cell = changed,
                Movement = adjoins ? movement with { Step = Math.Sign(movement.Step) * after } : movement,
            }
        );
    }

    /// <summary>Other lengths, in pulses; they take the place of a pattern of the rhythm.</summary>
    public static Outcome<Recipe> WithDurations(Recipe recipe, string text)
    {
        var cell = recipe.Cell!;
        var durations = text == "alike" ? ImmutableArray<Fraction>.Empty : TypedText.Fractions(text);
        return durations.Then<Recipe>(lengths =>
            lengths.IsEmpty || lengths.Length == cell.Offsets.Length
                ? recipe with
                {
                    Cell = cell with { Durations = lengths },
                    Rhythm = lengths.IsEmpty ? recipe.Rhythm : recipe.Rhythm with { Pattern = [] },
                }
                : new Fault(
                    $"{NumberWords.Of(lengths.Length, "length")} for a cell of {cell.Offsets.Length}",
                    Right: "a length for each note and rest of the cell"
                )
        );
    }

    /// <summary>Notes of the layout from the lowest to the highest that a cell plays, both counted; 0 for none.</summary>
    private static int Width(ImmutableArray<int?> offsets) => (offsets.Max() - offsets.Min() + 1) ?? 0;

    private static ImmutableArray<int> Left(ImmutableArray<int> entries, int length) =>
        entries.RemoveAll(entry => entry >= length);
}
