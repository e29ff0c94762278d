using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Importing;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Keeps a piece that was read, with the file as it came.</summary>
internal sealed class KeepPiece(Store store, TimeProvider time)
{
    private const string Nameless = "Untitled piece";

    /// <summary>Its key, or why it could not be kept.</summary>
    public async Task<Outcome<PieceKey>> Keep(ImportStep.Read read, CancellationToken stop = default)
    {
        var row = new PieceRow
        {
            Id = Guid.CreateVersion7(time.GetUtcNow()),
            Title = read.Import.Recipe.Title ?? Nameless,
            Recipe = RecipeJson.Write(read.Import.Recipe),
            FileName = read.Upload.FileName,
            File = read.Upload.Bytes,
            Added = time.GetUtcNow(),
        };
        if (await Saving.Do(() => Add(row, stop)) is { } fault)
        {
            return fault;
        }

        return PieceKey.Of(row.Id);
    }

    private async Task Add(PieceRow row, CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        db.Pieces.Add(row);
        await db.SaveChangesAsync(stop);
    }
}
