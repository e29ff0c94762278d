using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Searches every figure of a length for a few that none beats; so many searches at once that pages stay quick.</summary>
internal sealed class FindNewExercises : IDisposable
{
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

        if (TellingApart.All(criterion => asked.Weights.GetValueOrDefault(criterion.Id) == 0))
        {
            return new Fault(
                "nothing that counts tells figures of one length apart",
                "how much each one matters",
                string.Join(" or ", TellingApart.Select(criterion => criterion.Title)) + " above 0"
            );
        }

        return wish.Space(asked.Technique).TryGet(out _, out var fault) ? null : fault;
    }

    /// <summary>Begins a search for the player, filters and weights of a question; it waits while two others run.</summary>
    /// <param name="weighing">Player and music.</param>
    /// <param name="asked">Filters and weights.</param>
    /// <param name="wish">What is searched; nothing that is refused.</param>
    public RunningSearch Begin(Weighing weighing, Asked asked, SearchWish wish)
    {
        var space = wish.Space(asked.Technique).OrThrow();
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
