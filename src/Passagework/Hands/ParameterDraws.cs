using System.Numerics;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>
/// 200 joint draws of a player's parameters: how the figures would move if the hands were a little different. The
/// same draws serve every exercise and level, so that differences between exercises keep what they share.
/// </summary>
/// <remarks>
/// Each parameter is log-normal about its value; ω through 1 − ω (at most 1) and the finger factors through their
/// excess over 1. Normal deviates: SplitMix64 from seed 1, Box and Muller's cosine form, two uniforms a deviate.
/// </remarks>
internal sealed class ParameterDraws
{
    /// <summary>Number of draws; a multiple of every vector width.</summary>
    public const int Count = 200;

    private static readonly double[][] Deviates = DrawDeviates();
    private readonly double[] _entries = new double[Basis.Count * Count];

    public ParameterDraws(HandParameters centre)
    {
        for (var draw = 0; draw < Count; draw++)
        {
            var basis = Basis.Of(Moved(centre.Values, Deviates[draw]));
            for (var entry = 0; entry < Basis.Count; entry++)
            {
                _entries[(entry * Count) + draw] = basis[entry];
            }
        }
    }

    /// <summary>Adds coefficient times entry for every draw.</summary>
    public void AddTo(Span<double> sums, int entry, double coefficient)
    {
        var column = _entries.AsSpan(entry * Count, Count);
        for (var d = 0; d < Count; d += Vector<double>.Count)
        {
            var sum = new Vector<double>(sums[d..]) + (new Vector<double>(column[d..]) * coefficient);
            sum.CopyTo(sums[d..]);
        }
    }

    private static double[] Moved(ReadOnlySpan<double> centre, double[] deviates)
    {
        var moved = centre.ToArray();
        var next = 0;
        for (var i = 0; i < moved.Length; i++)
        {
            var entry = ParameterFile.Parameters[i];
            if (entry.Spread == 0)
            {
                continue;
            }

            var factor = Math.Exp(entry.Spread * deviates[next++]);
            moved[i] = entry.Id switch
            {
                "ω" => 1 - Math.Min(1, (1 - moved[i]) * factor),
                ['φ', ..] => 1 + ((moved[i] - 1) * factor),
                _ => moved[i] * factor,
            };
        }

        return moved;
    }

    private static double[][] DrawDeviates()
    {
        var chance = new SplitMix64(1);
        var spread = ParameterFile.Parameters.Count(entry => entry.Spread > 0);
        var draws = new double[Count][];
        for (var draw = 0; draw < Count; draw++)
        {
            draws[draw] = new double[spread];
            for (var i = 0; i < spread; i++)
            {
                var radius = Math.Sqrt(-2 * Math.Log(1 - chance.NextUniform()));
                draws[draw][i] = radius * Math.Cos(2 * Math.PI * chance.NextUniform());
            }
        }

        return draws;
    }
}
