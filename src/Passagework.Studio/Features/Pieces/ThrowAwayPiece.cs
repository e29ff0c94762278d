using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Takes an own piece off the list; it can be brought back.</summary>
internal sealed class ThrowAwayPiece(Store store, TimeProvider time) : ThrowAway<PieceRow>(store, time);
