using Passagework.Exercises;

namespace Passagework.Studio.Features.Exercises;

/// <summary>An exercise as its page shows it.</summary>
public sealed record OpenedExercise
{
    /// <summary>Which.</summary>
    public required ExerciseKey Key { get; init; }

    /// <summary>The idea.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>Title, given or made from the idea.</summary>
    public required string Title { get; init; }

    /// <summary>The state it was read in; a change hands it back. 0 for one of the library.</summary>
    public int Version { get; init; }

    /// <summary>Whether it stands on the shelf.</summary>
    public bool OnShelf { get; init; }

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Labels, each once.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];

    /// <summary>The teacher's remarks.</summary>
    public string Notes { get; init; } = "";

    /// <summary>What undoing takes back; null when there is nothing.</summary>
    public string? Undoes { get; init; }

    /// <summary>What can be done again; null when there is nothing.</summary>
    public string? Redoes { get; init; }

    /// <summary>Whether it is one of the starting library, of which a change makes an own one.</summary>
    public bool IsLibrary => !Key.IsOwn(out _);
}

/// <summary>What came of a change to an exercise.</summary>
public abstract record ChangeAnswer
{
    /// <summary>It is kept.</summary>
    public sealed record Kept(OpenedExercise Exercise) : ChangeAnswer;

    /// <summary>Another page has changed it since; nothing was overwritten.</summary>
    /// <param name="Theirs">As it is now.</param>
    public sealed record ChangedElsewhere(OpenedExercise Theirs) : ChangeAnswer;

    /// <summary>It could not be kept, and why.</summary>
    public sealed record Failed(Foundation.Fault Fault) : ChangeAnswer;
}
