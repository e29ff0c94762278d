using System.Collections.Immutable;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>One exercise that a search found.</summary>
/// <param name="Idea">The exercise, as a file writes it.</param>
/// <param name="Values">The values of the measured criteria in their order, 0 to 1; null where nothing could be measured.</param>
/// <param name="LibraryId">The exercise of the starting library that it is, whatever its first stroke; null when it is new.</param>
public sealed record Find(string Idea, ImmutableArray<double?> Values, string? LibraryId)
{
    /// <summary>The exercise.</summary>
    internal Outcome<Recipe> Recipe => RecipeJson.Read(Idea);
}

/// <summary>What the last search found, with what it looked for.</summary>
public sealed record KeptFinds
{
    /// <summary>What was looked for.</summary>
    public required SearchWish Wish { get; init; }

    /// <summary>For which player, filters and weights.</summary>
    public required Asked Asked { get; init; }

    /// <summary>Candidates that were looked at.</summary>
    public required long Visited { get; init; }

    /// <summary>All that there are.</summary>
    public required long Total { get; init; }

    /// <summary>How many none beats on everything.</summary>
    public required int Front { get; init; }

    /// <summary>A few unlike ones, the best first.</summary>
    public required ImmutableArray<Find> Found { get; init; }

    /// <summary>Whether all were looked at.</summary>
    public bool Complete => Visited == Total;

    /// <summary>What came of a search.</summary>
    internal static KeptFinds Of(DiscoveryResult result, Asked asked, SearchWish wish) =>
        new()
        {
            Wish = wish,
            Asked = asked,
            Visited = result.Visited,
            Total = result.Total,
            Front = result.Front,
            Found =
            [
                .. result.Found.Select(find => new Find(
                    RecipeJson.Write(find.Recipe with { Title = null }),
                    find.Values,
                    find.LibraryId
                )),
            ],
        };

    /// <summary>What a find is called, by the numbers of boxes of a room.</summary>
    internal Outcome<string> NameOf(Find find, RoomStyle style) =>
        Wish.Space(Asked.Technique)
            .Then(space => find.Recipe.Then<string>(idea => new CellNamer(space, style).Of(idea)));
}
