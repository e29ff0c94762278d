using Passagework.Choosing.Measures;

namespace Passagework.Choosing.Discovery;

/// <summary>What all parts of one search share.</summary>
internal sealed class SearchPlan
{
    private const int Reports = 500;
    private const int LongestSilence = 10_000;
    private readonly IProgress<DiscoveryProgress>? _progress;
    private readonly long _every;
    private readonly Lock _one = new();
    private readonly CellFront _kept;
    private long _visited;
    private int _count;

    public SearchPlan(
        DiscoveryQuestion question,
        CellVariant[] variants,
        IProgress<DiscoveryProgress>? progress,
        CancellationToken stop
    )
    {
        (Space, Filters, Variants) = (question.Space, question.Filters, variants);
        (_progress, Stop) = (progress, stop);
        Numbers = CellNumbers.Of(Space);
        Criteria = CriteriaOf(question);
        _kept = new CellFront(Criteria);
        _every = Math.Clamp(Space.Total / Reports, 1, LongestSilence);
    }

    /// <summary>The candidates.</summary>
    public CellSpace Space { get; }

    /// <summary>What a find must not be.</summary>
    public DiscoveryFilters Filters { get; }

    /// <summary>Layouts and directions.</summary>
    public CellVariant[] Variants { get; }

    /// <summary>Numbers of candidates.</summary>
    public CellNumbers Numbers { get; }

    /// <summary>
    /// Criteria on which candidates are compared: those that count, can be measured here and differ from cell to cell.
    /// </summary>
    public ComparedMeasure[] Criteria { get; }

    /// <summary>Whether to stop.</summary>
    public CancellationToken Stop { get; }

    /// <summary>Tells that candidates were looked at; safe for several threads.</summary>
    public void Report(long candidates)
    {
        if (_progress is null)
        {
            return;
        }

        var visited = Interlocked.Add(ref _visited, candidates);
        if (visited / _every != (visited - candidates) / _every)
        {
            _progress.Report(new DiscoveryProgress(visited, Space.Total, Volatile.Read(ref _count)));
        }
    }

    /// <summary>Tells that a part is done and what none beats in it, to count what is kept so far.</summary>
    public void Done(CellFront part)
    {
        if (_progress is null)
        {
            return;
        }

        lock (_one)
        {
            _kept.Merge(part);
            Volatile.Write(ref _count, _kept.Count);
        }
    }

    private static ComparedMeasure[] CriteriaOf(DiscoveryQuestion question) =>
        [
            .. Enumerable
                .Range(0, CellTake.Measures)
                .Where(k =>
                    question.Weights.GetValueOrDefault(RawMeasures.Criteria[k]) > 0
                    && (question.Music is { Count: > 0 } || !NeedsMusic(RawMeasures.Criteria[k]))
                )
                .Select(k => new ComparedMeasure(k, SignOf(question.Anchors.Of(RawMeasures.Criteria[k])))),
        ];

    private static int SignOf(Anchor? anchor) => anchor is not null && anchor.One < anchor.Zero ? -1 : 1;

    private static bool NeedsMusic(string criterion) => criterion is "general-use" or "use-in-music";
}
