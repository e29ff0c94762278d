using System.Collections.Immutable;

namespace Passagework.Exercises.Ideas;

/// <summary>Axes that belong together on the page.</summary>
/// <param name="Key">Stable: notes, layout, cell, movement, rhythm, picking, fretting or ending.</param>
/// <param name="Axes">The axes that this exercise has; the first is always a usual one.</param>
public sealed record AxisGroup(string Key, ImmutableArray<Axis> Axes);

/// <summary>One thing about an exercise that can be changed, or be read, as a plain control.</summary>
public sealed record Axis
{
    /// <summary>Stable name, that of the field in a recipe file, such as <c>movement.step</c>.</summary>
    public required string Key { get; init; }

    /// <summary>What it is, for those who hear the page.</summary>
    public required string Label { get; init; }

    /// <summary>The present value as text that <see cref="IdeaChange.Set"/> takes.</summary>
    public required string Text { get; init; }

    /// <summary>The present value as the room types it, which <see cref="IdeaChange.Type"/> takes.</summary>
    public required string Typed { get; init; }

    /// <summary>The present value in words, such as <c>by one step</c>.</summary>
    public required string Value { get; init; }

    /// <summary>All values that can be listed or stepped through, in order; empty where values are only typed or read.</summary>
    public ImmutableArray<AxisChoice> Choices { get; init; } = [];

    /// <summary>Which of the choices is the present value; null where there is none to choose.</summary>
    public int? Index { get; init; }

    /// <summary>What may be typed, such as <c>notes counted from 1, such as 1 2 5 2</c>; null where only choices are taken.</summary>
    public string? Typing { get; init; }

    /// <summary>Whether the page shows it at once; the others may be folded away.</summary>
    public bool IsUsual { get; init; } = true;

    /// <summary>What one step back leads to, in few words; null where there is none.</summary>
    public string? Backward { get; init; }

    /// <summary>What one step on leads to, in few words; null where there is none.</summary>
    public string? Forward { get; init; }

    /// <summary>Whether it only tells something and can't be set.</summary>
    public bool IsFact => Choices.IsEmpty && Typing is null;
}

/// <summary>One value of an axis.</summary>
/// <param name="Key">What <see cref="IdeaChange.Set"/> takes.</param>
/// <param name="Words">What the page shows.</param>
public sealed record AxisChoice(string Key, string Words)
{
    /// <summary>The same in few words, for a step that leads to it.</summary>
    public string Short { get; init; } = Words;
}
