using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>The ranges of a recipe's values; what they are in a file, with the JSON path of the first that is wrong.</summary>
/// <remarks>Limits that stand in no published format (lengths of texts and lists, tempo) are assumed by us.</remarks>
internal static class RecipeRules
{
    private const int LongestTitle = 200;
    private const int LongestPurpose = 1000;
    private const double FastestBpm = 1000;

    /// <summary>The first fault; null when every value is legal.</summary>
    public static Fault? Check(Recipe recipe) =>
        Parts(recipe)
        ?? Line(recipe.Id, LongestTitle, "$.id")
        ?? Line(recipe.Title, LongestTitle, "$.title")
        ?? Line(recipe.Purpose, LongestPurpose, "$.purpose")
        ?? InstrumentRules.Check(recipe.Instrument)
        ?? (recipe.Layout is { } layout ? LayoutRules.Check(layout)?.At("$.layout") : null)
        ?? (recipe.Cell is { } cell ? CellRules.Check(cell) : null)
        ?? MovementOf(recipe.Movement)
        ?? RhythmOf(recipe)
        ?? FrettingOf(recipe)
        ?? (recipe.Written is { } written ? WrittenRules.Check(written) : null)
        ?? LengthRules.Check(recipe);

    private static Fault? Parts(Recipe recipe)
    {
        if (recipe.Written is not null)
        {
            return recipe.Layout is null && recipe.Cell is null && recipe.Movement == new Movement()
                ? null
                : new Fault(
                    "a written line with a layout, cell or movement",
                    "$.written",
                    "either 'written', or 'layout' and 'cell'"
                );
        }

        return Missing(recipe.Notes, "notes")
            ?? Missing(recipe.Layout, "layout")
            ?? Missing(recipe.Cell, "cell");
    }

    private static Fault? Missing(object? part, string name) =>
        part is not null
            ? null
            : new Fault(
                $"the field '{name}' is missing",
                "$",
                "an exercise has notes, layout and cell, or written"
            );

    private static Fault? Line(string? text, int longest, string where)
    {
        if (text is null)
        {
            return null;
        }

        return text.Length <= longest && !text.Any(char.IsControl)
            ? null
            : new Fault("is no line of text", where, $"at most {longest} letters, without line breaks");
    }

    private static Fault? MovementOf(Movement movement)
    {
        var still = movement.Step == 0 && movement.Repeat < 2;
        var backwards = movement is { From: { } from, To: { } to } && from > to;
        return Bounds.Within(movement.Step, -7, 7, "$.movement.step")
            ?? Bounds.Within(movement.Repeat, 1, 9999, "$.movement.repeat")
            ?? Bounds.Within(movement.From ?? 0, 0, int.MaxValue, "$.movement.from")
            ?? Bounds.Within(movement.To ?? 0, 0, int.MaxValue, "$.movement.to")
            ?? (
                still
                    ? new Fault(
                        "a step of 0 stays on the first cell",
                        "$.movement.step",
                        "with 'repeat' above 1"
                    )
                    : null
            )
            ?? (
                backwards
                    ? new Fault("ends before it begins", "$.movement.to", $"{movement.From} or more")
                    : null
            );
    }

    private static Fault? RhythmOf(Recipe recipe)
    {
        var rhythm = recipe.Rhythm;
        var late = rhythm.StartOffset < Fraction.Zero || rhythm.StartOffset >= rhythm.Meter.Bar;
        return Bounds.Within(rhythm.NotesPerBeat, 1, 8, "$.rhythm.notesPerBeat")
            ?? (
                late
                    ? new Fault(
                        $"{rhythm.StartOffset} does not lie in the first bar",
                        "$.rhythm.startOffset",
                        $"0 or more, below {rhythm.Meter.Bar}"
                    )
                    : null
            )
            ?? (
                rhythm.TempoBpm is { } bpm && !(bpm > 0 && bpm <= FastestBpm)
                    ? new Fault("no tempo", "$.rhythm.tempo", "above 0, at most 1000 beats a minute")
                    : null
            )
            ?? (rhythm.Pattern.IsEmpty ? null : PatternAlone(recipe));
    }

    private static Fault? PatternAlone(Recipe recipe)
    {
        if (recipe.Written is not null)
        {
            return new Fault(
                "a written line has its own lengths",
                "$.rhythm.pattern",
                "leave the pattern out"
            );
        }

        return recipe.Cell is { Durations.IsEmpty: false }
            ? new Fault("the cell has its own durations", "$.rhythm.pattern", "one of the two")
            : null;
    }

    private static Fault? FrettingOf(Recipe recipe)
    {
        var fretting = recipe.Fretting;
        return Bounds.Each(
                fretting.Avoid,
                (finger, i) => Bounds.Within(finger, 1, 4, $"$.fretting.avoid[{i}]")
            )
            ?? Bounds.Each(fretting.Locks, (held, i) => LockOf(held, recipe, $"$.fretting.locks[{i}]"))
            ?? Twice(fretting.Locks);
    }

    private static Fault? LockOf(Lock held, Recipe recipe, string path) =>
        Bounds.Within(held.Note, 0, LengthRules.MostNotes - 1, $"{path}.note")
        ?? Bounds.Within(held.Finger ?? 0, 0, 4, $"{path}.finger")
        ?? Bounds.Within(held.String ?? 1, 1, recipe.Instrument.Tuning.StringCount, $"{path}.string")
        ?? Bounds.Within(held.Position ?? 1, 1, LayoutRules.HighestFret, $"{path}.position")
        ?? (
            held == new Lock(held.Note)
                ? new Fault("locks nothing", path, "finger, string, position or stroke")
                : null
        );

    private static Fault? Twice(ImmutableArray<Lock> locks)
    {
        var notes = new HashSet<int>();
        return Bounds.Each(
            locks,
            (held, index) =>
                notes.Add(held.Note)
                    ? null
                    : new Fault(
                        $"note {held.Note} is locked twice",
                        $"$.fretting.locks[{index}]",
                        "all that is fixed about a note in one lock"
                    )
        );
    }
}
