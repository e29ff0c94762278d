using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Finds a piece by the key in its address.</summary>
internal sealed class OpenPiece(Store store)
{
    /// <summary>The piece, or why there is none.</summary>
    public async Task<Outcome<OpenedPiece>> Open(PieceKey key, CancellationToken stop = default)
    {
        if (!key.IsOwn(out var id))
        {
            return BuiltIn(key);
        }

        await using var db = await store.Open(stop);
        var row = await db
            .Pieces.AsNoTracking()
            .SingleOrDefaultAsync(piece => piece.Id == id && piece.ThrownAway == null, stop);
        return row is null
            ? new Fault("there is no such piece, or it was thrown away", "the address", "one from the list")
            : Read(row);
    }

    /// <summary>A row as a piece; refused when its line can't be laid out any more.</summary>
    public static Outcome<OpenedPiece> Read(PieceRow row) =>
        RecipeJson
            .Read(row.Recipe)
            .Then(LineBuilder.Build)
            .Then<OpenedPiece>(line => new OpenedPiece
            {
                Key = PieceKey.Of(row.Id),
                Title = row.Title,
                Line = line,
                FileName = row.FileName,
                IsDemo = row.IsDemo,
                Added = row.Added,
            });

    /// <summary>A built-in piece as its page shows it.</summary>
    public static OpenedPiece Of(string id, Line line) =>
        new()
        {
            Key = new PieceKey(id),
            Title = line.Recipe.Title ?? id,
            Line = line,
        };

    private static Outcome<OpenedPiece> BuiltIn(PieceKey key)
    {
        var (id, line) = BuiltInPieces.Lines.FirstOrDefault(piece => piece.Id == key.Text);
        return line is null
            ? new Fault(
                $"there is no piece {Quote.Short(key.Text)}",
                "the address",
                NearestWord.Find(key.Text, BuiltInPieces.Ids) is { } near
                    ? $"did you mean '{near}'?"
                    : "one from the list"
            )
            : Of(id, line);
    }
}
