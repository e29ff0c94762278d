using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Studio.Features.Pieces;

/// <summary>What is hard in a piece, and what prepares it, for one player and technique.</summary>
public sealed record PreparedPiece
{
    /// <summary>The piece.</summary>
    public required OpenedPiece Piece { get; init; }

    /// <summary>Its melody, measured.</summary>
    public required Measurement Measured { get; init; }

    /// <summary>The technique of the piece and of all exercises.</summary>
    public required Technique Technique { get; init; }

    /// <summary>Its hardest moves, hardest first.</summary>
    public required IReadOnlyList<HardMove> Hardest { get; init; }

    /// <summary>Exercises that hold some of its moves, most first.</summary>
    public required IReadOnlyList<PreparingOne> Helpers { get; init; }

    /// <summary>The fewest exercises that hold all that any of them holds.</summary>
    public required IReadOnlyList<PreparingOne> Fewest { get; init; }

    /// <summary>What those hold together, and whether fewer would do.</summary>
    public required string Together { get; init; }

    /// <summary>What was left out of the piece or of the exercises, a phrase each.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }
}

/// <summary>One of the hardest moves.</summary>
/// <param name="Number">1 for the hardest.</param>
/// <param name="Note">Index of the note that it leads to.</param>
/// <param name="Hand">The hand that has most to do.</param>
/// <param name="Where">Bar and beat.</param>
/// <param name="What">Places and fingers.</param>
/// <param name="Time">Time needed, time there is.</param>
/// <param name="Tab">Its bar as text tab.</param>
public sealed record HardMove(
    int Number,
    int Note,
    Limit Hand,
    string Where,
    string What,
    string Time,
    string Tab
);

/// <summary>An exercise that prepares a piece.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Url">Its page.</param>
/// <param name="Hundredths">How many of a hundred moves of the piece it holds.</param>
/// <param name="Whole">Bars of which it holds every move, in words; empty for none.</param>
/// <param name="Figures">Bars in which a figure of it stands, in words; empty for none.</param>
[System.Diagnostics.CodeAnalysis.SuppressMessage(
    "Design",
    "CA1054",
    Justification = "An address within the studio."
)]
[System.Diagnostics.CodeAnalysis.SuppressMessage(
    "Design",
    "CA1056",
    Justification = "An address within the studio."
)]
public sealed record PreparingOne(string Title, string Url, int Hundredths, string Whole, string Figures);
