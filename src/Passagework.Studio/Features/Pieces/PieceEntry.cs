namespace Passagework.Studio.Features.Pieces;

/// <summary>A piece in the list.</summary>
public sealed record PieceEntry
{
    /// <summary>Which.</summary>
    public required PieceKey Key { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>Metre, bars and notes in words.</summary>
    public string Size { get; init; } = "";

    /// <summary>The written tempo in words; empty where none is written.</summary>
    public string Tempo { get; init; } = "";

    /// <summary>The first level at which the written tempo is reached, in words.</summary>
    public string From { get; init; } = "";

    /// <summary>The first bar as tab, as markup.</summary>
    public string FirstBar { get; init; } = "";

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }

    /// <summary>Name of the file it came from; empty when it was typed or is built in.</summary>
    public string FileName { get; init; } = "";
}

/// <summary>The pieces as their page lists them.</summary>
/// <param name="Own">The teacher's own, the latest first.</param>
/// <param name="BuiltIn">The built-in ones, from the easiest to the hardest.</param>
/// <param name="ThrownAway">Own ones that were thrown away, the latest first.</param>
public sealed record PieceList(
    IReadOnlyList<PieceEntry> Own,
    IReadOnlyList<PieceEntry> BuiltIn,
    IReadOnlyList<PieceEntry> ThrownAway
);
