using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Choosing;

/// <summary>Which exercise, for whom, judged by what.</summary>
public sealed record ChoiceQuestion
{
    /// <summary>Who is to play it.</summary>
    public required Player Player { get; init; }

    /// <summary>What there is to choose from, oldest first: the order in which equal ones are listed.</summary>
    public required ImmutableArray<CandidateSource> Candidates { get; init; }

    /// <summary>The music at hand, planned for the same player and technique.</summary>
    public required PieceCollection Pieces { get; init; }

    /// <summary>What counts how much.</summary>
    public Wishes Wishes { get; init; } = Wishes.Usual;

    /// <summary>What is worth 0 and 1 on each criterion, against the music at hand.</summary>
    public Anchors Anchors { get; init; } = Anchors.BuiltIn;

    /// <summary>How values become places.</summary>
    public IRankingMethod Method { get; init; } = RankingMethods.All[0];

    /// <summary>
    /// Whether candidates that no hand can play, or that nothing that counts can be measured on, are left out and told; else the
    /// question is refused.
    /// </summary>
    public bool LeavesOutUnfit { get; init; }

    /// <summary>What is worth 0 and 1 on a criterion: as the teacher says, else built in or got from the music at hand.</summary>
    public Anchor AnchorOf(string criterion)
    {
        if (Wishes.Anchors.TryGetValue(criterion, out var own))
        {
            return own;
        }

        return Anchors.Of(criterion) ?? Anchor.Own(criterion, 0, 1);
    }
}
