using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>The candidates in order, and how sure that is.</summary>
public sealed record ChoiceAnswer
{
    private readonly Lazy<LeadShares> _allWeightings = null!;

    /// <summary>What was asked.</summary>
    public required ChoiceQuestion Question { get; init; }

    /// <summary>The criteria, in the order of every candidate's figures.</summary>
    public required ImmutableArray<Criterion> Criteria { get; init; }

    /// <summary>The candidates as measured, in the order of the question.</summary>
    public required ImmutableArray<MeasuredCandidate> Candidates { get; init; }

    /// <summary>Values and weights.</summary>
    public required Choice Choice
    {
        get;
        init
        {
            field = value;
            _allWeightings = new(() => WeightingShares.Of(value, keepsOrder: false));
        }
    }

    /// <summary>The values of all candidates under each of the draws, row after row.</summary>
    public required ImmutableArray<double[]> Draws { get; init; }

    /// <summary>The order.</summary>
    public required Ranking Ranking { get; init; }

    /// <summary>Who leads how often over all weightings; worked out when it is first asked for.</summary>
    public LeadShares AllWeightings => _allWeightings.Value;

    /// <summary>The same over the weightings that keep the order of the teacher's weights.</summary>
    public required LeadShares OrderedWeightings { get; init; }

    /// <summary>The same under other plausible hands and other music, with the weights as they are.</summary>
    public required LeadShares OtherDraws { get; init; }

    /// <summary>What one weight would have to be for another to lead.</summary>
    public required ImmutableArray<Flip> Flips { get; init; }

    /// <summary>The least change of all weights at which a rival draws level; null where none does.</summary>
    public required SmallestChange? SmallestChange { get; init; }

    /// <summary>For each candidate one that is at least as good on everything; null where there is none.</summary>
    public required ImmutableArray<int?> Dominators { get; init; }

    /// <summary>Candidates that no hand can play, with the reason.</summary>
    public required ImmutableArray<(string Id, Fault Why)> LeftOut { get; init; }

    /// <summary>Criteria that would have counted but can be measured on nobody.</summary>
    public ImmutableArray<Criterion> NotMeasured { get; init; } = [];

    /// <summary>The best.</summary>
    public MeasuredCandidate Leader => Candidates[Ranking.Leader];

    /// <summary>The index of the one it has to be compared with: the best of another family, where there is one.</summary>
    public int RunnerUp =>
        Ranking
            .Standings.Skip(1)
            .Select(standing => standing.Candidate)
            .FirstOrDefault(
                candidate => Candidates[candidate].Source.Family != Leader.Source.Family,
                Ranking.RunnerUp
            );

    /// <summary>The one it has to be compared with.</summary>
    public MeasuredCandidate RunnerUpCandidate => Candidates[RunnerUp];

    /// <summary>Whether the leader is ahead of the runner-up in nine of ten draws of hands and music.</summary>
    public bool LeadIsClear => DrawsAhead(Ranking.Leader, RunnerUp) >= DrawShares.Clear * Figure.DrawCount;

    /// <summary>The flip that the present weights are nearest to; null where no single weight changes the leader.</summary>
    public Flip? NearestFlip =>
        Flips.MinBy(flip => Math.Abs(flip.Weight - Choice.Weights.Shares[flip.Criterion]));

    /// <summary>How clearly the leader is ahead of the runner-up, in words.</summary>
    public string ClosenessWords =>
        LeadIsClear ? Closeness.Words(OrderedWeightings.Behind[RunnerUp]) : Closeness.NotClear;

    /// <summary>In how many of the draws one candidate is ahead of another with the weights as they are.</summary>
    public int DrawsAhead(int first, int second)
    {
        var width = Criteria.Length;
        return Draws.Count(draw => Margin(draw) > Ranking.Tolerance);

        double Margin(double[] draw) =>
            Choice.Weights.Used.Sum(k =>
                Choice.Weights.Shares[k] * (draw[(first * width) + k] - draw[(second * width) + k])
            );
    }

    /// <summary>What is worth 0 and 1 on a criterion.</summary>
    public Anchor AnchorOf(int criterion) => Question.AnchorOf(Criteria[criterion].Id);

    /// <summary>
    /// Whether two candidates differ clearly on a criterion: the difference keeps its sign in nine of ten draws. A missing value is
    /// never clear.
    /// </summary>
    public bool IsClear(int first, int second, int criterion)
    {
        if (Choice.Table.IsMissing(first, criterion) || Choice.Table.IsMissing(second, criterion))
        {
            return false;
        }

        var ahead = DrawShares.Ahead(Choice.Table, Draws, (first, second), criterion);
        var behind = DrawShares.Ahead(Choice.Table, Draws, (second, first), criterion);
        return Math.Max(ahead, behind) >= DrawShares.Clear;
    }
}
