namespace Passagework.Studio.Data;

/// <summary>An exercise of the teacher's own: begun from nothing, or from one of the starting library.</summary>
public sealed class ExerciseRow : IVersioned, IThrownAway
{
    /// <summary>Part of its address.</summary>
    public Guid Id { get; init; }

    /// <summary>The idea as it stands, in the file format of recipes.</summary>
    public required string Recipe { get; set; }

    /// <summary>Title shown in lists; follows the idea.</summary>
    public required string Title { get; set; }

    /// <summary>Words to find it by, each once, parted by line ends.</summary>
    public string Labels { get; set; } = "";

    /// <summary>The teacher's own remarks; never printed.</summary>
    public string Notes { get; set; } = "";

    /// <summary>Whether it stands on the shelf; else it is one that was begun and not yet kept.</summary>
    public bool OnShelf { get; set; }

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Id of the library exercise it began as, if any.</summary>
    public string? Origin { get; init; }

    /// <summary>Number of the <see cref="StepRow"/> that is shown; steps after it can be done again.</summary>
    public int Step { get; set; }

    /// <summary>When it was last changed.</summary>
    public DateTimeOffset Changed { get; set; }

    /// <summary>When it was thrown away; null while it is there. It can be brought back.</summary>
    public DateTimeOffset? ThrownAway { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

/// <summary>One state of an exercise, so that every change can be undone, also after a restart.</summary>
public sealed class StepRow
{
    /// <summary>Of which exercise.</summary>
    public Guid ExerciseId { get; init; }

    /// <summary>Counted from 0, the exercise as it began.</summary>
    public int Number { get; init; }

    /// <summary>The idea after this step.</summary>
    public required string Recipe { get; set; }

    /// <summary>What was changed, such as "step from one to two"; empty for the beginning.</summary>
    public required string What { get; set; }
}
