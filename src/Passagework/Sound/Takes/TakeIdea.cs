using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>A take to be made: an exercise of the library, the guitar, the seed and the plan.</summary>
public sealed record TakeIdea
{
    /// <summary>Short name, used for its files.</summary>
    public required string Id { get; init; }

    /// <summary>What is wrong with it, for people.</summary>
    public required string About { get; init; }

    /// <summary>The exercise by its id in <see cref="Library"/>.</summary>
    public required string Exercise { get; init; }

    /// <summary>Another root; null for the exercise's own.</summary>
    public string? Root { get; init; }

    /// <summary>Other notes a felt beat; null for the exercise's own.</summary>
    public int? NotesPerBeat { get; init; }

    /// <summary>The guitar.</summary>
    public GuitarSound Guitar { get; init; }

    /// <summary>Chooses what the plan leaves to chance.</summary>
    public uint Seed { get; init; } = 1;

    /// <summary>How it is played and recorded.</summary>
    public required TakePlan Plan { get; init; }

    /// <summary>The exercise as it is to be laid out; refused where the library does not hold it or it can't be changed so.</summary>
    public Outcome<Recipe> Recipe() =>
        Library
            .Find(Exercise)
            .Then(found => Root is null ? found.Recipe : RecipeChange.Root(found.Recipe, Root))
            .Then<Recipe>(recipe =>
                NotesPerBeat is { } notes
                    ? recipe with
                    {
                        Rhythm = recipe.Rhythm with { NotesPerBeat = notes },
                    }
                    : recipe
            );
}
