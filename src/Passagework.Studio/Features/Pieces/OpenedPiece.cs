using Passagework.Exercises;

namespace Passagework.Studio.Features.Pieces;

/// <summary>A piece, read and not yet planned for any hands.</summary>
public sealed record OpenedPiece
{
    /// <summary>Which.</summary>
    public required PieceKey Key { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Its notes.</summary>
    public required Line Line { get; init; }

    /// <summary>Name of the file it came from; empty when it was typed or is built in.</summary>
    public string FileName { get; init; } = "";

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>When it was added; null for a built-in one.</summary>
    public DateTimeOffset? Added { get; init; }

    /// <summary>Whether it is the teacher's own.</summary>
    public bool IsOwn => Key.IsOwn(out _);

    /// <summary>The written tempo in felt beats a minute; null where none is.</summary>
    public double? TempoBpm => Line.Recipe.Rhythm.TempoBpm;
}
