using System.Collections.Immutable;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Choosing.Measures;

/// <summary>
/// How far an exercise builds more than itself: the harmonic mean of how many of its moves music has (precision) and how many of
/// music's moves it gives often enough (recall).
/// </summary>
/// <remarks>
/// Strokes count as part of a move. Often enough is ten times a minute at a tempo at which the player is relaxed (both
/// assumed). Covering moves is not yet transfer: that they carry over is hoped, not measured.
/// </remarks>
public sealed record GeneralUse
{
    private const double LeastTimesAMinute = 10;

    private GeneralUse() { }

    /// <summary>0 to 1; null where the exercise or the music has no moves.</summary>
    public required double? Raw { get; init; }

    /// <summary>The same in each of the 200 resamples of the pieces, the least count held; empty where there is no value.</summary>
    public required ImmutableArray<double> Resampled { get; init; }

    /// <summary>Share of the exercise's moves whose kind the music has.</summary>
    public required double Precision { get; init; }

    /// <summary>Share of the music's moves whose kind the exercise gives often enough.</summary>
    public required double Recall { get; init; }

    /// <summary>Moves of the exercise; of several takes all together.</summary>
    public required long Moves { get; init; }

    /// <summary>Those of them that the music has.</summary>
    public required long MovesMet { get; init; }

    /// <summary>Pieces that were looked through.</summary>
    public required int Pieces { get; init; }

    /// <summary>The mean over takes on one exercise, such as both first strokes; counts are added up.</summary>
    /// <param name="takes">At least one, all of the same player and technique as the music.</param>
    /// <param name="music">The repertoire in force.</param>
    public static GeneralUse Of(IReadOnlyCollection<Measurement> takes, PieceCollection music) =>
        Mean([.. takes.Select(take => Of(take, music))]);

    /// <summary>Of one take.</summary>
    public static GeneralUse Of(Measurement take, PieceCollection music) =>
        Of(
            Distribution<MoveClass>.Of(MoveClass.In(take.Realization)),
            LeastCount(take.Ceiling.Least, take.Realization.Notes.Length),
            music
        );

    /// <summary>Of moves in one pass.</summary>
    /// <param name="moves">The moves of an exercise.</param>
    /// <param name="leastCount">Times in a pass from which a kind is given often enough.</param>
    /// <param name="music">The repertoire in force.</param>
    public static GeneralUse Of(Distribution<MoveClass> moves, double leastCount, PieceCollection music)
    {
        var (met, given) = (0L, 0L);
        foreach (var each in moves.Classes)
        {
            var (here, there) = (moves.CountOf(each), music.Moves.CountOf(each));
            met += there > 0 ? here : 0;
            given += here >= leastCount ? there : 0;
        }

        var measured = !moves.IsEmpty && !music.Moves.IsEmpty;
        var (precision, recall) = measured
            ? ((double)met / moves.Total, (double)given / music.Moves.Total)
            : (0, 0);
        return new GeneralUse
        {
            Raw = measured ? Joined(precision, recall) : null,
            Resampled = measured ? Resample(moves, leastCount, music) : [],
            Precision = precision,
            Recall = recall,
            Moves = moves.Total,
            MovesMet = met,
            Pieces = music.Pieces.Length,
        };
    }

    /// <summary>Times in one pass that make ten a minute; 0 when nothing limits the tempo.</summary>
    /// <param name="leastCeiling">Of the player, notes a second.</param>
    /// <param name="notes">Notes of one pass.</param>
    public static double LeastCount(double? leastCeiling, int notes) =>
        leastCeiling is { } ceiling ? LeastTimesAMinute * notes / (60 * Ceiling.RelaxedShare * ceiling) : 0;

    /// <summary>The harmonic mean of both shares; 0 when both are.</summary>
    public static double Joined(double precision, double recall) =>
        precision + recall > 0 ? 2 * precision * recall / (precision + recall) : 0;

    private static GeneralUse Mean(ImmutableArray<GeneralUse> takes)
    {
        var values = takes.Select(take => take.Resampled).ToList();
        return new GeneralUse
        {
            Raw = takes.Any(take => take.Raw is null) ? null : takes.Average(take => take.Raw),
            Resampled = values.Exists(each => each.IsEmpty)
                ? []
                : [.. Enumerable.Range(0, PieceResamples.Count).Select(r => values.Average(each => each[r]))],
            Precision = takes.Average(take => take.Precision),
            Recall = takes.Average(take => take.Recall),
            Moves = takes.Sum(take => take.Moves),
            MovesMet = takes.Sum(take => take.MovesMet),
            Pieces = takes[0].Pieces,
        };
    }

    private static ImmutableArray<double> Resample(
        Distribution<MoveClass> moves,
        double leastCount,
        PieceCollection music
    )
    {
        var all = new double[PieceResamples.Count];
        AddTimes(all, music, piece => piece.Classes.Total);
        var (met, given, times) = (new double[all.Length], new double[all.Length], new double[all.Length]);
        foreach (var each in moves.Classes.Where(each => music.Moves.CountOf(each) > 0))
        {
            Array.Clear(times);
            AddTimes(times, music, piece => piece.Classes.CountOf(each));
            var count = moves.CountOf(each);
            for (var r = 0; r < all.Length; r++)
            {
                met[r] += times[r] > 0 ? count : 0;
                given[r] += count >= leastCount ? times[r] : 0;
            }
        }

        return [.. all.Select((mass, r) => Joined(met[r] / moves.Total, given[r] / mass))];
    }

    private static void AddTimes(double[] sums, PieceCollection music, Func<Piece, long> count)
    {
        for (var piece = 0; piece < music.Pieces.Length; piece++)
        {
            if (count(music.Pieces[piece]) is > 0 and var each)
            {
                music.Resamples.AddTo(sums, piece, each);
            }
        }
    }
}
