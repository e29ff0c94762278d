using BenchmarkDotNet.Attributes;
using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary>Music planned for a player, exercises judged by it, a piece prepared.</summary>
[MemoryDiagnoser]
public class RepertoireBenchmarks
{
    private static readonly Player Player = Player.At(2);
    private readonly List<List<Measurement>> _candidates = [];
    private readonly List<PreparingExercise> _exercises = [];
    private PieceCollection _music = null!;

    /// <summary>Measures every family and plans the built-in pieces.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        foreach (var family in Library.Families)
        {
            var takes = CandidateSource
                .OfFamily(family)
                .OrThrow()
                .Forms.Select(recipe => Measurer.Measure(recipe, Player).OrThrow())
                .ToList();
            _candidates.Add(takes);
            _exercises.Add(new PreparingExercise(family, [.. takes.Select(take => take.Realization)]));
        }

        _music = BuiltInPieces();
    }

    /// <summary>The built-in repertoire fingered, stroked and counted.</summary>
    [Benchmark]
    public PieceCollection BuiltInPieces() => PieceCollection.BuiltIn(Player, Technique.Alternate).OrThrow();

    /// <summary>General use and use in music of every family with 200 resamples each.</summary>
    [Benchmark]
    public double Every_family_by_the_built_in_pieces()
    {
        var sum = 0.0;
        foreach (var takes in _candidates)
        {
            var others = _music.Without(takes[0].Realization.Line);
            sum += GeneralUse.Of(takes, others).Raw ?? 0;
            sum += UseInMusic.Of(takes[0].Realization.Line, others).Raw ?? 0;
        }

        return sum;
    }

    /// <summary>The longest built-in piece: hardest and rarest moves, coverage, smallest set, figures.</summary>
    [Benchmark]
    public Preparation Preparation_of_a_piece() =>
        Preparation.Of(_music.Pieces.MaxBy(piece => piece.Moves.Length)!, _exercises, _music);
}
