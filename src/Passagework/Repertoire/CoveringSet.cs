using System.Collections.Immutable;

namespace Passagework.Repertoire;

/// <summary>Few exercises that hold the moves of a piece between them.</summary>
/// <param name="Exercises">Their names, in order.</param>
/// <param name="Wanted">How many kinds of moves were asked for.</param>
/// <param name="Missing">Those of them that no exercise holds.</param>
/// <param name="IsSmallest">Whether it is proved that no fewer do as well.</param>
/// <param name="Factor">How many times the smallest number it may be at most; 1 when it is the smallest.</param>
public sealed record CoveringSet(
    ImmutableArray<string> Exercises,
    int Wanted,
    ImmutableArray<MoveClass> Missing,
    bool IsSmallest,
    double Factor
)
{
    /// <summary>Share of a piece's moves from which a kind is worth an exercise (assumed).</summary>
    public const double UsualLeastShare = 0.01;

    // About ten seconds; random sets of 64 and 128 take a hundredth of it.
    private const int MostNodes = 200_000;

    /// <summary>
    /// The fewest exercises that hold every kind of move with at least a share of the piece, as far as any of them does. Exact up to 64
    /// exercises and 128 kinds, in bounded time; beyond, or when stopped, greedy and not proved. The order of the exercises does
    /// not matter: of several answers as small the names decide.
    /// </summary>
    /// <param name="piece">The moves of the piece.</param>
    /// <param name="exercises">Names, all different, with the moves of each.</param>
    /// <param name="leastShare">Share from which a kind counts; 0 asks for all.</param>
    /// <param name="stop">Ends the search early.</param>
    /// <exception cref="ArgumentException">Two exercises have the same name.</exception>
    public static CoveringSet Of(
        Distribution<MoveClass> piece,
        IEnumerable<(string Name, Distribution<MoveClass> Moves)> exercises,
        double leastShare = UsualLeastShare,
        CancellationToken stop = default
    )
    {
        var ordered = exercises.OrderBy(exercise => exercise.Name, StringComparer.Ordinal).ToList();
        if (ordered.Select(exercise => exercise.Name).Distinct().Count() < ordered.Count)
        {
            throw new ArgumentException("Two exercises have the same name.", nameof(exercises));
        }

        var wanted = piece.Classes.Where(each => piece.ShareOf(each) >= leastShare).ToList();
        var missing = wanted.Where(each => ordered.TrueForAll(one => one.Moves.CountOf(each) == 0)).ToList();
        var kinds = wanted.Except(missing).ToList();
        var sets = ordered.ConvertAll(one =>
            Enumerable.Range(0, kinds.Count).Where(kind => one.Moves.CountOf(kinds[kind]) > 0).ToHashSet()
        );
        var (taken, isSmallest) = Fewest(sets, kinds.Count, stop);
        return new CoveringSet(
            [.. taken.Order().Select(set => ordered[set].Name)],
            wanted.Count,
            [.. missing],
            isSmallest,
            isSmallest ? 1 : GreedyCover.Factor(sets.Max(set => set.Count))
        );
    }

    private static (IReadOnlyList<int> Taken, bool IsSmallest) Fewest(
        List<HashSet<int>> sets,
        int kinds,
        CancellationToken stop
    )
    {
        var greedy = GreedyCover.Of(sets);
        if (kinds > SetCover.MostElements || sets.Count > SetCover.MostSets)
        {
            return (greedy, false);
        }

        var bits = sets.ConvertAll(set =>
            set.Aggregate(UInt128.Zero, (bits, kind) => bits | (UInt128.One << kind))
        );
        var found = SetCover.Solve([.. bits], greedy, MostNodes, stop);
        return (found.Taken, found.IsProved);
    }
}
