using Passagework.Foundation;

namespace Passagework.Studio.Features.Shelf;

/// <summary>One filter of the shelf, with what can be chosen.</summary>
/// <param name="Name">Its name in the address.</param>
/// <param name="Label">What it is about, for readers.</param>
/// <param name="Any">Words for no choice.</param>
/// <param name="Choices">The choices.</param>
public sealed record ShelfFilter(string Name, string Label, string Any, IReadOnlyList<ShelfChoice> Choices)
{
    /// <summary>The choice with a key; null for none; an unknown key is a fault.</summary>
    public Outcome<ShelfChoice?> Find(string? key)
    {
        if (string.IsNullOrEmpty(key))
        {
            return (ShelfChoice?)null;
        }

        return Choices.FirstOrDefault(choice => choice.Key == key) is { } found
            ? found
            : new Fault(
                $"there is no {Label} {Quote.Short(key)}",
                Right: NearestWord.Hint(key, [.. Choices.Select(choice => choice.Key)])
            );
    }
}

/// <summary>One choice of a filter.</summary>
/// <param name="Key">Its word in the address.</param>
/// <param name="Words">As shown.</param>
/// <param name="Holds">Whether an exercise stays.</param>
public sealed record ShelfChoice(string Key, string Words, Func<ShelfExercise, bool> Holds);
