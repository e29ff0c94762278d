namespace Passagework.Sound.Mixing;

/// <summary>
/// Keeps samples below −1 dBFS: unchanged up to −6 dBFS, bent smoothly above. It has no memory, so that any stretch of
/// sound comes out as it does within the whole.
/// </summary>
public static class PeakCeiling
{
    private const float Knee = 0.5f;

    /// <summary>−1 dBFS, which no sample passes.</summary>
    public const float Highest = 0.8912509f;

    /// <summary>Bends the samples in place.</summary>
    public static void Apply(Span<float> samples)
    {
        foreach (ref var sample in samples)
        {
            var size = Math.Abs(sample);
            if (size > Knee)
            {
                const float room = Highest - Knee;
                sample = MathF.CopySign(Knee + (room * MathF.Tanh((size - Knee) / room)), sample);
            }
        }
    }
}
