namespace Passagework.Sound.Strings;

/// <summary>A pickup with its resonance, and nothing after it.</summary>
internal sealed class CleanOutput(int sampleRate) : IOutput
{
    private const float Level = 0.22f;

    // Coil and cable resonate at some kilohertz (Jungmann 1994; Zollner, Physics of the electric guitar).
    private readonly Biquad[] _filters =
    [
        Biquad.HighPass(55, 0.7, sampleRate),
        Biquad.HighShelf(1600, 6, sampleRate),
        Biquad.LowPass(4200, 1.6, sampleRate),
    ];

    /// <inheritdoc/>
    public int Latency => 0;

    /// <inheritdoc/>
    public bool Quiet => Array.TrueForAll(_filters, f => f.Quiet);

    /// <inheritdoc/>
    public void Run(Span<float> heard, ReadOnlySpan<float> direct)
    {
        Biquad.Run(_filters, heard);

        Samples.Scale(heard, Level);
    }

    /// <inheritdoc/>
    public void Reset()
    {
        foreach (var filter in _filters)
        {
            filter.Reset();
        }
    }
}
