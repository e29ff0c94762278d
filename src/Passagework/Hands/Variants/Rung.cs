using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands.Variants;

/// <summary>Where a variant stands beside the exercise as it is written.</summary>
public enum RungKind
{
    /// <summary>Clearly easier.</summary>
    Easier,

    /// <summary>The exercise itself.</summary>
    AsWritten,

    /// <summary>Clearly harder.</summary>
    Harder,

    /// <summary>Clearly harder than the harder one.</summary>
    HarderStill,
}

/// <summary>One step of a ladder: the exercise with one thing changed.</summary>
/// <param name="Kind">Which step.</param>
/// <param name="Words">What is changed and what follows, such as <c>from an up-stroke: every skip then follows an up-stroke</c>.</param>
/// <param name="Recipe">The changed exercise.</param>
/// <param name="Top">Its top tempo; null where nothing limits it.</param>
public sealed record Rung(RungKind Kind, string Words, Recipe Recipe, TopTempo? Top);

/// <summary>An easier form of an exercise and two harder ones, found by measuring.</summary>
/// <param name="All">From the easiest to the hardest; only those that are clearly so, the exercise itself always.</param>
public sealed record Rungs(ImmutableArray<Rung> All)
{
    /// <summary>Two forms are told apart where their top tempi differ by at least this share (chosen by us).</summary>
    public const double Margin = 0.05;

    /// <summary>And where the difference keeps its sign in so many of the joint draws of the hands (chosen by us).</summary>
    public const double SureShare = 0.9;

    /// <summary>
    /// The ladder for a player. Of all changes of one thing those are taken that change the top tempo least and yet
    /// clearly, so that a step is a step and no leap.
    /// </summary>
    public static Outcome<Rungs> Of(Recipe recipe, Player player, RoomStyle style = default) =>
        Measurer.Measure(recipe, player).Then<Rungs>(measured => Of(measured, style));

    /// <summary>The same for an exercise that is already measured.</summary>
    public static Rungs Of(Measurement measured, RoomStyle style = default) =>
        new(new RungSearch(measured, style).Search());
}
