using System.Numerics;
using Passagework.Foundation;

namespace Passagework.Repertoire;

/// <summary>
/// How a repertoire would look if chance had put other pieces into it: 200 times as many pieces as there are, drawn from them with
/// putting back (B. Efron's bootstrap, 1979). The same draws serve every exercise.
/// </summary>
/// <remarks>
/// Each resample has its own stream of SplitMix64, from seed 1000 on. Where a piece is left out, draws of it are passed over, so that the
/// resamples with and without it have most of their pieces in common.
/// </remarks>
public sealed class PieceResamples
{
    /// <summary>Number of resamples: as many as there are joint draws of a player's hands.</summary>
    public const int Count = 200;

    private const ulong FirstSeed = 1000;

    // Times of piece p in resample r at p × Count + r.
    private readonly double[] _times;

    private PieceResamples(int pieces)
    {
        Pieces = pieces;
        _times = new double[pieces * Count];
    }

    /// <summary>Number of pieces, in the repertoire and in each resample.</summary>
    public int Pieces { get; }

    /// <summary>How often a piece was drawn.</summary>
    /// <param name="resample">0 to 199.</param>
    /// <param name="piece">Its number from 0.</param>
    public int Times(int resample, int piece) => (int)_times[(piece * Count) + resample];

    /// <summary>Resamples of the pieces that are kept, in their order.</summary>
    internal static PieceResamples Of(ReadOnlySpan<bool> kept)
    {
        var number = new int[kept.Length];
        var pieces = 0;
        for (var piece = 0; piece < kept.Length; piece++)
        {
            number[piece] = kept[piece] ? pieces++ : -1;
        }

        var resamples = new PieceResamples(pieces);
        for (var resample = 0; pieces > 0 && resample < Count; resample++)
        {
            resamples.Draw(resample, number);
        }

        return resamples;
    }

    /// <summary>Adds a number as often as a piece was drawn, in every resample.</summary>
    internal void AddTo(Span<double> sums, int piece, double each)
    {
        var times = _times.AsSpan(piece * Count, Count);
        for (var r = 0; r < Count; r += Vector<double>.Count)
        {
            var sum = new Vector<double>(sums[r..]) + (new Vector<double>(times[r..]) * each);
            sum.CopyTo(sums[r..]);
        }
    }

    private void Draw(int resample, int[] number)
    {
        var chance = new SplitMix64(FirstSeed + (ulong)resample);
        for (var drawn = 0; drawn < Pieces; )
        {
            var piece = number[(int)(chance.NextUniform() * number.Length)];
            if (piece >= 0)
            {
                _times[(piece * Count) + resample]++;
                drawn++;
            }
        }
    }
}
