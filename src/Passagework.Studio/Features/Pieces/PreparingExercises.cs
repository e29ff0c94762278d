using Microsoft.EntityFrameworkCore;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Shelf;

namespace Passagework.Studio.Features.Pieces;

/// <summary>The exercises that may prepare a piece: every family, and the teacher's own that stand on the shelf.</summary>
internal sealed class PreparingExercises(Store store)
{
    // With the families below the sixty-four up to which the smallest set is proved.
    private const int MostOwn = 30;
    private const string UsualForm = "up-and-down";

    /// <summary>What they are, in a fixed order; equal as long as nothing on the shelf has changed.</summary>
    public async Task<IReadOnlyList<Source>> Read(CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        var own = await db
            .Exercises.AsNoTracking()
            .Where(row => row.OnShelf && row.ThrownAway == null)
            .OrderByDescending(row => row.Changed)
            .Take(MostOwn)
            .ToListAsync(stop);
        return [.. Library.Families.Select(OfFamily), .. own.Select(OfRow).OfType<Source>()];
    }

    private static Source OfFamily(string family)
    {
        var forms = Library.OfFamily(family);
        var shown = forms.FirstOrDefault(form => form.Form == UsualForm) ?? forms[0];
        return new Source(family, ShelfFilters.TitleOf(family), new ExerciseKey(shown.Id).Url, 0)
        {
            Forms = CandidateSource.OfFamily(family).OrThrow().Forms,
        };
    }

    private static Source? OfRow(ExerciseRow row) =>
        RecipeJson.Read(row.Recipe).TryGet(out var recipe, out _)
            ? new Source(row.Id.ToString("n"), row.Title, ExerciseKey.Of(row.Id).Url, row.Version)
            {
                Forms = [recipe],
            }
            : null;

    /// <summary>One of them.</summary>
    /// <param name="Name">Unlike any other's.</param>
    /// <param name="Title">What it is called.</param>
    /// <param name="Url">Its page.</param>
    /// <param name="Version">Raised by every change.</param>
    internal sealed record Source(string Name, string Title, string Url, int Version)
    {
        /// <summary>The ways of playing it.</summary>
        public required IReadOnlyList<Recipe> Forms { get; init; }

        /// <summary>It as it is played in a piece; a fault when it can't be.</summary>
        public Foundation.Outcome<PreparingExercise> In(Piece piece, Player player) =>
            PreparingExercise.Of(Name, Forms, piece, player);
    }
}
