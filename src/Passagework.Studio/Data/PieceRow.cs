namespace Passagework.Studio.Data;

/// <summary>Music that a student wants to play.</summary>
public sealed class PieceRow : IVersioned, IThrownAway
{
    /// <summary>Part of its address.</summary>
    public Guid Id { get; init; }

    /// <summary>Title shown.</summary>
    public required string Title { get; set; }

    /// <summary>The line as it was read, in the file format of recipes.</summary>
    public required string Recipe { get; init; }

    /// <summary>Name of the file it came from; empty when it was typed.</summary>
    public string FileName { get; init; } = "";

    /// <summary>The file as it came, byte for byte; empty when it was typed.</summary>
    public byte[] File { get; init; } = [];

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>When it was added.</summary>
    public DateTimeOffset Added { get; init; }

    /// <summary>When it was thrown away; null while it is there.</summary>
    public DateTimeOffset? ThrownAway { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}
