using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary>Choosing: ranking beyond the measuring, and one whole question over every family.</summary>
[MemoryDiagnoser]
public class ChoosingBenchmarks
{
    private const int Candidates = 500;
    private const int Width = 6;
    private const int DrawCount = 200;
    private Choice _choice = null!;
    private double[][] _draws = [];
    private PieceCollection _pieces = null!;
    private ImmutableArray<CandidateSource> _families;

    /// <summary>A table of 500 candidates on six criteria with 200 draws, and the library.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var chance = new SplitMix64(7);
        ImmutableArray<string> criteria = [.. Enumerable.Range(0, Width).Select(k => $"k{k}")];
        var rows = ImmutableArray.CreateBuilder<Candidate>();
        for (var a = 0; a < Candidates; a++)
        {
            var marks = ImmutableArray.CreateBuilder<Mark>();
            for (var k = 0; k < Width; k++)
            {
                marks.Add(new Mark(chance.NextUniform(), 0.02));
            }

            rows.Add(new Candidate($"a{a}", marks.ToImmutable()));
        }

        var table = ChoiceTable.Of(criteria, rows.ToImmutable()).OrThrow();
        _choice = Choice.Of(table, CriterionWeights.Of(criteria, [5, 4, 3, 2, 1, 0]).OrThrow()).OrThrow();
        _draws = new double[DrawCount][];
        for (var d = 0; d < DrawCount; d++)
        {
            _draws[d] = new double[Candidates * Width];
            for (var i = 0; i < _draws[d].Length; i++)
            {
                _draws[d][i] = chance.NextUniform();
            }
        }

        _pieces = PieceCollection.BuiltIn(Player.At(2), Technique.Alternate).OrThrow();
        _families = [.. Library.Families.Select(family => CandidateSource.OfFamily(family).OrThrow())];
    }

    /// <summary>All that is worked out once 500 exercises are measured: 10,000 weightings twice, 200 draws, flips, nearest weights, front.</summary>
    [Benchmark]
    public double Rank500()
    {
        var ranking = Ranking.Of(_choice);
        var all = WeightingShares.Of(_choice, keepsOrder: false);
        var ordered = WeightingShares.Of(_choice, keepsOrder: true);
        var draws = DrawShares.Of(_choice, _draws);
        var flips = FlipPoints.Of(_choice);
        var change = SmallestChange.Of(_choice);
        var front = ParetoFront.Dominators(_choice);
        return ranking.Leader
            + all.First[0]
            + ordered.First[0]
            + draws.First[0]
            + flips.Length
            + (change?.Length ?? 0)
            + front.Length;
    }

    /// <summary>Every family of the library for one player, warm: measured, ranked, tried.</summary>
    [Benchmark]
    public string WholeLibrary() =>
        Chooser
            .Choose(
                new ChoiceQuestion
                {
                    Player = Player.At(2),
                    Candidates = _families,
                    Pieces = _pieces,
                    LeavesOutUnfit = true,
                }
            )
            .OrThrow()
            .Leader.Source.Id;
}
