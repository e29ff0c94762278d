using Microsoft.EntityFrameworkCore;
using Passagework.Repertoire;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Lists the teacher's own pieces and the built-in ones.</summary>
internal sealed class ListPieces(Store store, PieceFacts facts)
{
    private const int MostThrownAway = 20;

    /// <summary>All of them.</summary>
    public async Task<PieceList> List(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var rows = await db
            .Pieces.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderByDescending(row => row.Added)
            .Select(row => new PieceRow
            {
                Id = row.Id,
                Title = row.Title,
                Recipe = row.Recipe,
                FileName = row.FileName,
                IsDemo = row.IsDemo,
                Added = row.Added,
            })
            .ToListAsync(stop);
        var thrown = await db
            .Pieces.AsNoTracking()
            .Where(row => row.ThrownAway != null)
            .OrderByDescending(row => row.ThrownAway)
            .Take(MostThrownAway)
            .Select(row => new { row.Id, row.Title })
            .ToListAsync(stop);
        return new PieceList(
            [.. rows.Select(Entry)],
            [
                .. BuiltInPieces
                    .Lines.AsParallel()
                    .AsOrdered()
                    .Select(piece => facts.Of(OpenPiece.Of(piece.Id, piece.Line))),
            ],
            [.. thrown.Select(row => new PieceEntry { Key = PieceKey.Of(row.Id), Title = row.Title })]
        );
    }

    private PieceEntry Entry(PieceRow row) =>
        OpenPiece.Read(row).TryGet(out var piece, out var fault)
            ? facts.Of(piece)
            : new PieceEntry
            {
                Key = PieceKey.Of(row.Id),
                Title = row.Title,
                Size = fault.What,
            };
}
