namespace Passagework.Sound.Mixing;

/// <summary>Integrated loudness by ITU-R BS.1770-4: K-weighted, in overlapping blocks of 400 ms, gated twice.</summary>
/// <remarks>
/// Memory does not grow with length: block powers are kept as counts and sums in steps of 0.01 LU, so that only a block
/// within 0.01 LU of the relative gate can fall on its wrong side. One or two channels, both of weight 1.
/// </remarks>
public sealed class LoudnessMeter
{
    private const double AbsoluteGate = -70;
    private const double RelativeGate = -10;
    private const double Offset = -0.691;
    private const int StepsPerUnit = 100;
    private const int Units = 90;
    private const int PartsPerBlock = 4;

    private readonly WeightedChannel[] _channels;
    private readonly int _partLength;
    private readonly double[] _parts = new double[PartsPerBlock];
    private readonly long[] _counts = new long[Units * StepsPerUnit];
    private readonly double[] _powers = new double[Units * StepsPerUnit];
    private double _part;
    private int _inPart;
    private long _filled;

    /// <summary>A meter for sound at that rate.</summary>
    /// <param name="sampleRate">Samples a second.</param>
    /// <param name="channels">1 or 2.</param>
    public LoudnessMeter(int sampleRate, int channels)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(channels, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(channels, 2);
        var channel = new WeightedChannel(KWeighting.Shelf(sampleRate), KWeighting.HighPass(sampleRate));
        _channels = [.. Enumerable.Repeat(channel, channels)];
        _partLength = (int)Math.Round(sampleRate / 10.0);
    }

    /// <summary>Loudness of everything so far, in LUFS; null while no block of 400 ms passed the absolute gate.</summary>
    public double? Integrated => Gated(Mean(AbsoluteGate)) is { } power ? Lufs(power) : null;

    /// <summary>Adds samples, the channels interleaved.</summary>
    public void Add(ReadOnlySpan<float> samples)
    {
        for (var i = 0; i + _channels.Length <= samples.Length; i += _channels.Length)
        {
            for (var channel = 0; channel < _channels.Length; channel++)
            {
                var weighted = _channels[channel].Next(samples[i + channel]);
                _part += weighted * weighted;
            }

            if (++_inPart == _partLength)
            {
                EndPart();
            }
        }
    }

    private void EndPart()
    {
        _parts[_filled % PartsPerBlock] = _part / _partLength;
        _filled++;
        (_part, _inPart) = (0, 0);
        if (_filled < PartsPerBlock)
        {
            return;
        }

        var power = _parts.Sum() / PartsPerBlock;
        var steps = (Lufs(power) - AbsoluteGate) * StepsPerUnit;
        if (steps >= 0)
        {
            var step = (int)Math.Min(steps, _counts.Length - 1);
            _counts[step]++;
            _powers[step] += power;
        }
    }

    private double? Gated(double? ungated) => ungated is { } power ? Mean(Lufs(power) + RelativeGate) : null;

    private double? Mean(double gate)
    {
        var from = Math.Max(0, (int)Math.Ceiling((gate - AbsoluteGate) * StepsPerUnit));
        var (count, power) = (0L, 0.0);
        for (var step = from; step < _counts.Length; step++)
        {
            count += _counts[step];
            power += _powers[step];
        }

        return count == 0 ? null : power / count;
    }

    private static double Lufs(double power) => Offset + (10 * Math.Log10(power));
}
