using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Studio.Features.Choosing;

/// <summary>What kind of new exercises are looked for.</summary>
/// <param name="Length">Notes of the figure, 3 to 8.</param>
/// <param name="Boxes">Where it may lie, boxes 1 to 5.</param>
/// <param name="Count">How many are wanted.</param>
internal sealed record SearchWish(int Length, ImmutableArray<int> Boxes, int Count);

/// <summary>Searches every figure of a length for a few that none beats; so many searches at once that pages stay quick.</summary>
internal sealed class FindNewExercises : IDisposable
{
    private const int NearFret = 5;
    private const int AtOnce = 2;
    private static readonly int Threads = Math.Max(1, Environment.ProcessorCount / AtOnce);

    /// <summary>The criteria on which figures of one length differ.</summary>
    public static readonly ImmutableArray<Criterion> TellingApart =
    [
        Criteria.EvenLoad,
        Criteria.GeneralUse,
        Criteria.StayingPower,
        Criteria.UseInMusic,
    ];

    private readonly SemaphoreSlim _places = new(AtOnce);

    /// <summary>Why nothing can be looked for; null when something can.</summary>
    public static Fault? Refusal(Asked asked, SearchWish wish)
    {
        if (wish.Boxes.IsEmpty)
        {
            return new Fault("there is nowhere to look", "the boxes", "at least one box");
        }

        return TellingApart.Any(criterion => asked.Weights.GetValueOrDefault(criterion.Id) > 0)
            ? null
            : new Fault(
                "nothing that counts tells figures of one length apart",
                "how much each one matters",
                string.Join(" or ", TellingApart.Select(criterion => criterion.Title)) + " above 0"
            );
    }

    /// <summary>Begins a search for the player, filters and weights of a question; it waits while two others run.</summary>
    /// <param name="weighing">Player and music.</param>
    /// <param name="asked">Filters and weights.</param>
    /// <param name="wish">What is searched.</param>
    public RunningSearch Begin(Weighing weighing, Asked asked, SearchWish wish)
    {
        var space = CellSpace.Usual(wish.Length) with
        {
            Layouts = [.. wish.Boxes.Select(number => (Layout)new Layout.Box(number, NearFret))],
            Picking = new PickingPlan { Technique = asked.Technique },
        };
        var question = new DiscoveryQuestion
        {
            Space = space,
            Player = weighing.Question.Player,
            Music = weighing.Question.Pieces,
            Anchors = weighing.Question.Anchors,
            Weights = Criteria.All.ToImmutableDictionary(
                criterion => criterion.Id,
                criterion => asked.Weights.GetValueOrDefault(criterion.Id) / (double)Asked.MostWeight
            ),
            Filters = new DiscoveryFilters
            {
                MaxStretch = asked.WidestStretch,
                MinCeiling = asked.LeastTempo,
            },
            Count = wish.Count,
            Threads = Threads,
        };
        return new RunningSearch(question, _places);
    }

    /// <inheritdoc/>
    public void Dispose() => _places.Dispose();
}
