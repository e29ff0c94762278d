using Microsoft.EntityFrameworkCore;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The music to judge by, and what is worth 0 and 1 beside it.</summary>
/// <param name="Pieces">Planned for one player and technique.</param>
/// <param name="Anchors">The shipped ones for the built-in pieces; music of the teacher's own gets its own.</param>
internal sealed record MusicAtHand(PieceCollection Pieces, Anchors Anchors);

/// <summary>Finds the music of a question and plans it for its player.</summary>
internal sealed class GatherMusic(Store store)
{
    /// <summary>How many pieces of the teacher's own there are.</summary>
    public async Task<int> CountOwn(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        return await db.Pieces.CountAsync(row => row.ThrownAway == null, stop);
    }

    /// <summary>The built-in pieces, or the teacher's own; refused where none can be used.</summary>
    public async Task<Outcome<MusicAtHand>> Gather(Asked asked, CancellationToken stop = default)
    {
        var player = asked.Player;
        if (!asked.OwnMusic)
        {
            return await Task.Run(
                () =>
                    PieceCollection
                        .BuiltIn(player, asked.Technique)
                        .Then<MusicAtHand>(pieces => new MusicAtHand(pieces, Anchors.BuiltIn)),
                stop
            );
        }

        await using var db = await store.Open(stop);
        var rows = await db
            .Pieces.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderBy(row => row.Id)
            .Select(row => new { row.Title, row.Recipe })
            .ToListAsync(stop);
        if (rows.Count == 0)
        {
            return new Fault("there are no pieces of your own yet", "the music", "the built-in pieces");
        }

        return await Task.Run(
            () =>
                PieceCollection
                    .Of(rows.Select(row => (row.Title, LineOf(row.Recipe))), player, asked.Technique)
                    .Then<MusicAtHand>(pieces => new MusicAtHand(
                        pieces,
                        Anchors.BuiltIn.With([.. AnchorSample.Of(pieces, player, asked.Technique)])
                    )),
            stop
        );
    }

    private static Outcome<Line> LineOf(string recipe) => RecipeJson.Read(recipe).Then(LineBuilder.Build);
}
