using System.Collections.Immutable;

namespace Passagework.Repertoire;

/// <summary>A kind of move that stands out in a piece.</summary>
/// <param name="Move">The occurrence with the greatest load, the first of several.</param>
/// <param name="Times">How often the kind occurs in the piece.</param>
public sealed record NotableMove(PieceMove Move, int Times);

/// <summary>A kind of move that is rare elsewhere.</summary>
/// <param name="Notable">The kind in the piece.</param>
/// <param name="Elsewhere">How often it occurs in the other music.</param>
public sealed record RareMove(NotableMove Notable, int Elsewhere);

/// <summary>Picks out the moves of a piece that a student should know about.</summary>
public static class NotableMoves
{
    /// <summary>
    /// The kinds of moves that leave least time to spare, hardest first. What is hard here is the time that a move needs
    /// over the time there is, so a wide jump after a long note is not.
    /// </summary>
    public static ImmutableArray<NotableMove> Hardest(Piece piece, int count) =>
        [
            .. Kinds(piece)
                .OrderByDescending(notable => notable.Move.Load)
                .ThenBy(notable => notable.Move.Note)
                .Take(count),
        ];

    /// <summary>The kinds of moves that are least common elsewhere, rarest first; of equally rare ones the hardest first.</summary>
    /// <param name="elsewhere">The moves of the music compared with; the piece itself may be part of it.</param>
    public static ImmutableArray<NotableMove> Rarest(
        Piece piece,
        Distribution<MoveClass> elsewhere,
        int count
    ) =>
        [
            .. Kinds(piece)
                .OrderBy(notable => elsewhere.CountOf(notable.Move.Class))
                .ThenByDescending(notable => notable.Move.Load)
                .ThenBy(notable => notable.Move.Note)
                .Take(count),
        ];

    /// <summary>Certain kinds of moves, the most frequent in the piece first, then the hardest.</summary>
    public static ImmutableArray<NotableMove> Most(Piece piece, ImmutableArray<MoveClass> kinds) =>
        [
            .. Kinds(piece)
                .Where(notable => kinds.Contains(notable.Move.Class))
                .OrderByDescending(notable => notable.Times)
                .ThenByDescending(notable => notable.Move.Load)
                .ThenBy(notable => notable.Move.Note),
        ];

    private static IEnumerable<NotableMove> Kinds(Piece piece) =>
        piece
            .Moves.GroupBy(move => move.Class)
            .Select(kind => new NotableMove(kind.OrderByDescending(move => move.Load).First(), kind.Count()));
}
