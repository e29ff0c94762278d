using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing.Discovery;

/// <summary>Finds new exercises: measures every cell of a space and shows a few unlike ones that none beats on everything.</summary>
/// <example>
/// <c>Discoverer.Find(new DiscoveryQuestion { Space = CellSpace.Usual(5), Player = Player.At(2) })</c>
/// </example>
public static class Discoverer
{
    /// <summary>
    /// Searches the whole space, or what can be visited until told to stop. Refused where the question has no answer: values out
    /// of range, a layout that can't be laid, nothing that counts.
    /// </summary>
    public static Outcome<DiscoveryResult> Find(
        DiscoveryQuestion question,
        IProgress<DiscoveryProgress>? progress = null,
        CancellationToken stop = default
    )
    {
        if (Check(question) is { } fault)
        {
            return fault;
        }

        return CellVariant
            .AllOf(question.Space, new CellJudge(question.Player, question.Music))
            .Then(variants =>
            {
                var plan = new SearchPlan(question, variants, progress, stop);
                return plan.Criteria.Length == 0
                    ? NothingCounts()
                    : Answer(question, plan, Search(plan, question.Threads));
            });
    }

    /// <summary>The parts of a search, each merged in visiting order.</summary>
    internal static CellSearch[] Search(SearchPlan plan, int threads)
    {
        var steps = (2 * plan.Space.Reach) + 1;
        var each = steps * steps;
        var parts = new CellSearch[plan.Variants.Length * each];
        Parallel.For(
            0,
            parts.Length,
            new ParallelOptions { MaxDegreeOfParallelism = threads },
            part =>
            {
                parts[part] = new CellSearch(plan, part / each);
                var (first, second) = (part % each / steps, part % steps);
                parts[part].Run([first - plan.Space.Reach, second - plan.Space.Reach]);
                plan.Done(parts[part].Front);
            }
        );
        return parts;
    }

    /// <summary>One front for all parts; equal ones keep the earliest.</summary>
    internal static CellFront Merged(SearchPlan plan, IEnumerable<CellSearch> parts)
    {
        var front = new CellFront(plan.Criteria);
        foreach (var part in parts)
        {
            front.Merge(part.Front);
        }

        return front;
    }

    private static Outcome<DiscoveryResult> Answer(
        DiscoveryQuestion question,
        SearchPlan plan,
        CellSearch[] parts
    )
    {
        var front = Merged(plan, parts);
        return new DiscoveryResult
        {
            Visited = parts.Sum(part => part.Visited),
            Total = plan.Space.Total,
            Front = front.Count,
            Equal = front.InOrder.Sum(entry => entry.Alike),
            Removed = Enum.GetValues<Removal>()
                .ToImmutableDictionary(
                    reason => reason,
                    reason => parts.Sum(part => part.Removed[(int)reason])
                ),
            Found = new FewUnlike(question, plan).Of([.. front.InOrder]),
        };
    }

    private static Fault? Check(DiscoveryQuestion question) =>
        question.Space.Check()
        ?? Instrument.Bounds.Within(question.Count, 1, 50, "count")
        ?? Instrument.Bounds.Within(question.Threads, 1, 256, "threads");

    private static Fault NothingCounts() =>
        new(
            "no criterion that counts tells cells apart here",
            "weights",
            "even-load or staying-power above 0, or pieces for general-use and use-in-music"
        );
}
