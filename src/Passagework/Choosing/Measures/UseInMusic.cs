using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Repertoire;

namespace Passagework.Choosing.Measures;

/// <summary>A figure of an exercise that lives in the music.</summary>
/// <param name="Shape">Its intervals and rhythm; it has 3 to 6 notes.</param>
/// <param name="FirstNote">Index of its first note where it first stands in the exercise.</param>
/// <param name="Pieces">Pieces that hold it, in any key.</param>
public sealed record CellAtHome(CellShape Shape, int FirstNote, int Pieces);

/// <summary>
/// How far one meets the figures of an exercise in music: the share of pieces that hold each, cautiously taken (the
/// lower bound of Wilson at 90 %), weighed by its share in the exercise. Figures that music would hold by chance do not count.
/// </summary>
public sealed record UseInMusic
{
    private UseInMusic() { }

    /// <summary>0 to 1; null where there are no pieces or the exercise has no figures.</summary>
    public required double? Raw { get; init; }

    /// <summary>The same in each of the 200 resamples of the pieces, what beats chance held; empty where there is no value.</summary>
    public required ImmutableArray<double> Resampled { get; init; }

    /// <summary>Without caution: the chance that a figure taken from the exercise is in a piece taken from the music.</summary>
    public required double Found { get; init; }

    /// <summary>Figures of three to six notes in the exercise, each as often as it stands there.</summary>
    public required long Cells { get; init; }

    /// <summary>Those of them that some piece holds more often than by chance.</summary>
    public required long CellsMet { get; init; }

    /// <summary>The figure of those that most pieces hold, the longest and then the first of several; null where there is none.</summary>
    public required CellAtHome? MostAtHome { get; init; }

    /// <summary>Pieces that were looked through.</summary>
    public required int Pieces { get; init; }

    /// <summary>Share of the exercise's figures that the music holds, 0 to 1.</summary>
    public double ShareMet => Cells == 0 ? 0 : (double)CellsMet / Cells;

    /// <summary>Of a line; strokes and fingers do not matter.</summary>
    public static UseInMusic Of(Line exercise, PieceCollection music)
    {
        var cells = Repertoire.Cells.In(exercise);
        var pieces = music.Pieces.Length;
        var met = cells.Classes.Where(music.Solos.BeatsChance).ToList();
        var measured = !cells.IsEmpty && pieces > 0;
        return new UseInMusic
        {
            Raw = measured
                ? met.Sum(cell => cells.ShareOf(cell) * Wilson.Of(music.Solos.Holding(cell), pieces).Low)
                : null,
            Resampled = measured ? Resample(cells, met, music) : [],
            Found = met.Sum(cell => cells.ShareOf(cell) * (music.Solos.ShareHolding(cell) ?? 0)),
            Cells = cells.Total,
            CellsMet = met.Sum(cell => (long)cells.CountOf(cell)),
            MostAtHome = MostAtHomeOf(exercise, met, music.Solos),
            Pieces = pieces,
        };
    }

    private static ImmutableArray<double> Resample(
        Distribution<CellShape> cells,
        List<CellShape> met,
        PieceCollection music
    )
    {
        var pieces = music.Pieces.Length;
        var low = Enumerable.Range(0, pieces + 1).Select(count => Wilson.Of(count, pieces).Low).ToArray();
        var (sums, holding) = (new double[PieceResamples.Count], new double[PieceResamples.Count]);
        foreach (var cell in met)
        {
            Array.Clear(holding);
            foreach (var piece in music.Solos.Holders(cell))
            {
                music.Resamples.AddTo(holding, piece, 1);
            }

            var share = cells.ShareOf(cell);
            for (var r = 0; r < sums.Length; r++)
            {
                sums[r] += share * low[(int)holding[r]];
            }
        }

        return [.. sums];
    }

    private static CellAtHome? MostAtHomeOf(Line exercise, List<CellShape> met, SoloSet solos)
    {
        if (met.Count == 0)
        {
            return null;
        }

        var most = met.Max(solos.Holding);
        var best = met.Where(cell => solos.Holding(cell) == most).ToList();
        var length = best.Max(cell => cell.Notes);
        return best.Where(cell => cell.Notes == length)
            .Select(cell => new CellAtHome(cell, Repertoire.Cells.FirstIn(exercise, cell), most))
            .MinBy(cell => cell.FirstNote);
    }
}
