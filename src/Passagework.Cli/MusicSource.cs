using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Cli;

/// <summary>The music to judge by, and what is worth 0 and 1 beside it.</summary>
/// <param name="Pieces">The pieces, planned for one player and technique.</param>
/// <param name="Anchors">The shipped ones for the built-in pieces; music of the teacher's own gets its own.</param>
internal sealed record MusicSource(PieceCollection Pieces, Anchors Anchors)
{
    /// <summary>The pieces of a folder, or the built-in ones.</summary>
    public static Outcome<MusicSource> Find(
        string? folder,
        Terminal terminal,
        Player player,
        Technique technique
    ) =>
        PiecesSource
            .Find(folder, terminal, player, technique)
            .Then<MusicSource>(pieces => new MusicSource(
                pieces,
                folder is null
                    ? Anchors.BuiltIn
                    : Anchors.BuiltIn.With([.. AnchorSample.Of(pieces, player, technique)])
            ));
}
