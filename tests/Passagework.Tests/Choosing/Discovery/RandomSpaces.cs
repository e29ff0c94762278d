using System.Collections.Immutable;
using CsCheck;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Tests.Choosing.Discovery;

/// <summary>Random spaces of one layout with a player and a cell that fits the path.</summary>
internal static class RandomSpaces
{
    private static readonly string[] Tunings =
    [
        "standard",
        "drop D",
        "all fourths",
        "seven-string",
        "bass",
        "open G",
    ];

    private static readonly string[] ScaleNames =
    [
        "minor pentatonic",
        "major",
        "minor blues",
        "harmonic minor",
        "minor seventh",
    ];

    private static readonly Gen<Recipe?> Bases = Gen.Select(
        Pick(ScaleNames),
        Pick("A", "C#", "Eb", "E", "G"),
        Pick(LayoutChoice.Kinds.ToArray()),
        Pick(Tunings),
        Gen.Int[1, 5],
        Gen.Int[1, 12],
        BaseOf
    );

    /// <summary>What is measured: a space, its only direction, a cell and a player.</summary>
    public static readonly Gen<Case> Any = Gen.Select(
            Bases,
            Gen.Enum<Technique>(),
            Gen.Enum<Direction>(),
            Gen.Select(Gen.Int[1, 3], Pick(2, 3, 4, 6), Gen.Int[-7, 7].Array[2, 7]),
            Players,
            CaseOf
        )
        .Where(found => found is not null)
        .Select(found => found!);

    private static Gen<Player> Players =>
        Gen.Select(
            Gen.OneOf(Gen.Int[0, 4].Select(level => (double)level), Gen.Double[0, 4]),
            Gen.Double[0.85, 1.2],
            Pick<ImmutableArray<int>>([], [], [4], [2]),
            Gen.Enum<Clear>(),
            (level, size, avoid, clear) =>
                Player.At(level) with
                {
                    HandSize = size,
                    Avoid = avoid,
                    Clear = clear,
                }
        );

    private static Gen<T> Pick<T>(params T[] ones) => Gen.Int[0, ones.Length - 1].Select(i => ones[i]);

    private static Recipe? BaseOf(string scale, string root, string kind, string tuning, int box, int near)
    {
        var plain = Library.Find("straight-up").OrThrow().Recipe;
        return RecipeChange
            .Tuning(plain, tuning)
            .Then(recipe => RecipeChange.Scale(recipe, scale))
            .Then(recipe => RecipeChange.Root(recipe, root))
            .Then(recipe => RecipeChange.Box(recipe, $"{box}"))
            .Then(recipe => RecipeChange.Near(recipe, $"{near}"))
            .Then(recipe => LayoutChoice.Take(recipe, kind))
            .TryGet(out var found, out _)
            ? found
            : null;
    }

    private static Case? CaseOf(
        Recipe? recipe,
        Technique technique,
        Direction direction,
        (int Step, int NotesPerBeat, int[] Steps) cell,
        Player player
    )
    {
        if (recipe is null)
        {
            return null;
        }

        int[] offsets = [0, .. cell.Steps];
        for (var i = 1; i < offsets.Length; i++)
        {
            offsets[i] = offsets[i - 1] + (offsets[i] % 4);
        }

        var space = new CellSpace
        {
            Notes = recipe.Notes!,
            Instrument = recipe.Instrument,
            Layouts = [recipe.Layout!],
            Directions = [direction],
            Picking = new PickingPlan { Technique = technique },
            Length = offsets.Length,
            Step = cell.Step,
            Rhythm = new RhythmPlan { NotesPerBeat = cell.NotesPerBeat },
        };
        var built = LineBuilder.Build(space.RecipeOf(space.Layouts[0], direction, FirstStroke.Down, offsets));
        return built.TryGet(out _, out _) ? new Case(space, direction, offsets, player) : null;
    }

    /// <summary>One candidate for a player.</summary>
    public sealed record Case(CellSpace Space, Direction Direction, int[] Offsets, Player Player)
    {
        public override string ToString() =>
            $"{Space.Notes} {Space.Layouts[0]} {Space.Picking.Technique} {Direction} step {Space.Step}: "
            + $"{string.Join(' ', Offsets)}; level {Player.Level}, size {Player.HandSize}, avoids {Player.Avoid.Length}";
    }
}
