using Passagework.Exercises;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Shelf;

/// <summary>One exercise as the shelf knows it.</summary>
public sealed record ShelfExercise
{
    /// <summary>Which.</summary>
    public required ExerciseKey Key { get; init; }

    /// <summary>Title, given or made from the idea.</summary>
    public required string Title { get; init; }

    /// <summary>The idea.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>What it comes to for the player asked for.</summary>
    public required ShelfFigures Figures { get; init; }

    /// <summary>Its family; empty for an own one.</summary>
    public string Family { get; init; } = "";

    /// <summary>Labels; none for one of the library.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];

    /// <summary>The teacher's remarks.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Whether every one of some words occurs in what is written about it.</summary>
    public bool Holds(IEnumerable<string> words) =>
        words.All(word =>
            Written().Any(text => text.Contains(word, StringComparison.CurrentCultureIgnoreCase))
        );

    private IEnumerable<string> Written() =>
        [Title, Recipe.Purpose ?? "", Key.Text, Family.Replace('-', ' '), .. Labels, Notes];
}

/// <summary>One row: an exercise, or a family by the first of its forms that the filters leave.</summary>
/// <param name="Title">Name of the family, or of the exercise.</param>
/// <param name="First">The one that is drawn and measured in the row.</param>
/// <param name="Forms">All of them with what tells them apart; empty for a single one.</param>
public sealed record ShelfRow(string Title, ShelfExercise First, IReadOnlyList<ShelfForm> Forms);

/// <summary>One form of a family.</summary>
/// <param name="Key">Which exercise.</param>
/// <param name="Words">Such as "rising".</param>
public sealed record ShelfForm(ExerciseKey Key, string Words);

/// <summary>Rows under one heading.</summary>
/// <param name="Heading">Such as "Your own".</param>
/// <param name="Rows">In the order in which they are shown.</param>
/// <param name="More">Further ones that are not listed.</param>
public sealed record ShelfGroup(string Heading, IReadOnlyList<ShelfRow> Rows, int More = 0);
