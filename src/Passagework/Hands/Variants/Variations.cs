using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Hands.Variants;

/// <summary>All single changes that teachers make to find an easier or a harder form (common practice).</summary>
internal static class Variations
{
    private const int LongestCell = 16;
    private const int FewStrings = 3;
    private static readonly int[] Divisions = [1, 2, 3, 4, 6, 8];

    /// <summary>Those that the exercise allows.</summary>
    public static IEnumerable<Variation> Of(Recipe recipe, RoomStyle style = default) =>
        Strokes(recipe)
            .Concat(NoteValues(recipe))
            .Concat(recipe.Cell is { } cell ? Cells(recipe, cell) : [])
            .Concat(Steps(recipe))
            .Concat(Boxes(recipe, style))
            .Concat(FewerStrings(recipe));

    /// <summary>The exercise with the other first stroke; null where there is no such choice.</summary>
    public static Variation? OtherFirst(Recipe recipe)
    {
        var plan = recipe.Picking;
        var chooses = plan.Technique is not (Technique.AllDown or Technique.AllUp or Technique.Fingers);
        if (!chooses || plan.First == FirstStroke.Best)
        {
            return null;
        }

        var up = plan.First == FirstStroke.Down;
        var other = plan with { First = up ? FirstStroke.Up : FirstStroke.Down };
        return new Variation(
            up ? "from an up-stroke" : "from a down-stroke",
            RecipeChange.Picked(recipe, other)
        );
    }

    private static IEnumerable<Variation> Strokes(Recipe recipe)
    {
        if (OtherFirst(recipe) is { } other)
        {
            yield return other;
        }

        foreach (
            var (technique, words) in new[]
            {
                (Technique.Alternate, "strictly down and up"),
                (Technique.Economy, "in economy picking"),
                (Technique.AllDown, "with down-strokes only"),
            }
        )
        {
            if (technique != recipe.Picking.Technique && recipe.Picking.Technique != Technique.Fingers)
            {
                yield return new Variation(
                    words,
                    RecipeChange.Picked(recipe, recipe.Picking with { Technique = technique })
                );
            }
        }
    }

    private static IEnumerable<Variation> NoteValues(Recipe recipe)
    {
        if (recipe.Written is not null || !recipe.Rhythm.Pattern.IsEmpty)
        {
            return [];
        }

        return Divisions
            .Where(notes => notes != recipe.Rhythm.NotesPerBeat)
            .Select(notes => new Variation(
                $"{NumberWords.Of(notes, "note")} to the beat",
                recipe with
                {
                    Rhythm = recipe.Rhythm with { NotesPerBeat = notes },
                }
            ));
    }

    private static IEnumerable<Variation> Cells(Recipe recipe, Cell cell)
    {
        if (Stopped(recipe, cell) is { } stopped)
        {
            yield return new Variation("a beat of rest after each group", stopped);
        }

        if (cell.Slurs.Equals(CellSlurs.None) && recipe.Picking.Technique != Technique.Fingers)
        {
            var slurred = cell with { Slurs = new CellSlurs(SameString: true, []) };
            yield return new Variation("slurred on each string", recipe with { Cell = slurred });
        }

        foreach (var length in new[] { cell.Offsets.Length - 1, cell.Offsets.Length + 1 })
        {
            if (length is >= 2 and <= LongestCell && IsRun(cell))
            {
                var figure = string.Join(' ', Enumerable.Range(1, length));
                if (IdeaChange.Set(recipe, "cell.offsets", figure).TryGet(out var other, out _))
                {
                    yield return new Variation($"in groups of {NumberWords.Of(length)}", other);
                }
            }
        }
    }

    private static bool IsRun(Cell cell) =>
        cell.Offsets.Length > 1
        && cell.Offsets.Select((offset, entry) => offset == entry).All(plain => plain);

    // The rest lasts a beat, after which the strokes begin again with the first.
    private static Recipe? Stopped(Recipe recipe, Cell cell)
    {
        var length = cell.Offsets.Length;
        if (length is < 2 or >= LongestCell || cell.Offsets[^1] is null || !recipe.Rhythm.Pattern.IsEmpty)
        {
            return null;
        }

        var lengths = cell.Durations.IsEmpty ? Enumerable.Repeat(Fraction.One, length) : cell.Durations;
        return recipe with
        {
            Cell = cell with
            {
                Offsets = cell.Offsets.Add(null),
                Durations = [.. lengths, Fraction.Of(recipe.Rhythm.NotesPerBeat)],
            },
        };
    }

    private static IEnumerable<Variation> Steps(Recipe recipe)
    {
        int[] steps = recipe is { Written: null, Movement.Step: 1 } ? [2] : [];
        int[] back = recipe is { Written: null, Movement.Step: 2 } ? [1] : [];
        foreach (var step in steps.Concat(back))
        {
            if (IdeaChange.Set(recipe, "movement.step", AxisText.Of(step)).TryGet(out var other, out _))
            {
                yield return new Variation($"by {NumberWords.Of(step, "step")}", other);
            }
        }
    }

    private static IEnumerable<Variation> Boxes(Recipe recipe, RoomStyle style)
    {
        if (recipe is not { Layout: Layout.Box box, Notes: { } notes })
        {
            yield break;
        }

        var next = (box.Number % notes.Semitones.Length) + 1;
        if (RecipeChange.Box(recipe, AxisText.Of(next)).TryGet(out var other, out _))
        {
            yield return new Variation($"in box {style.Box(next, notes)}", other);
        }
    }

    // The three strings where the line begins.
    private static IEnumerable<Variation> FewerStrings(Recipe recipe)
    {
        if (
            recipe
                is not { Layout: { } layout, Notes: { } notes, Movement: { From: null, To: null } movement }
            || !LayoutPlanner.Lay(layout, notes, recipe.Instrument).TryGet(out var path, out _)
        )
        {
            yield break;
        }

        var rises = movement.Direction is Direction.Up or Direction.UpAndDown;
        var strings = path.Places.Select(place => place.String).Distinct().ToList();
        var kept = (rises ? strings.Take(FewStrings) : strings.TakeLast(FewStrings)).ToList();
        var used = path.Places.Count(place => kept.Contains(place.String));
        var part = rises ? movement with { To = used - 1 } : movement with { From = path.Length - used };
        if (strings.Count > FewStrings && strings.SequenceEqual(strings.OrderDescending()))
        {
            yield return new Variation(
                $"{Numbered.Strings([.. kept])} only",
                LockKeeping.Fit(recipe, recipe with { Movement = part })
            );
        }
    }
}
