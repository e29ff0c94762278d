namespace Passagework.Sound.Strings;

/// <summary>A pickup into an amplifier that clips softly, and a loudspeaker.</summary>
internal sealed class DrivenOutput(int sampleRate) : IOutput
{
    // By how much the filters of pickup and loudspeaker delay a note's rise.
    private const double FilterSeconds = 7e-5;
    private const float Drive = 12;
    private const float Level = 0.2f;

    private readonly Biquad[] _before =
    [
        Biquad.HighPass(110, 0.7, sampleRate),
        Biquad.LowPass(4000, 1.4, sampleRate),
    ];

    // A guitar loudspeaker: little under 90 Hz, a rise before 3 kHz, a steep fall above 5 kHz (common practice).
    private readonly Biquad[] _after =
    [
        Biquad.HighPass(85, 0.8, sampleRate),
        Biquad.Peak(2600, 1.2, 4, sampleRate),
        Biquad.LowPass(4600, 0.54, sampleRate),
        Biquad.LowPass(4600, 1.31, sampleRate),
    ];

    private readonly Oversampler _clip = new();
    private int _silentSamples;

    /// <inheritdoc/>
    public int Latency { get; } = Oversampler.Latency + (int)(FilterSeconds * sampleRate);

    /// <inheritdoc/>
    public bool Quiet =>
        _silentSamples > StringVoice.Block
        && Array.TrueForAll(_before, f => f.Quiet)
        && Array.TrueForAll(_after, f => f.Quiet);

    /// <inheritdoc/>
    public void Run(Span<float> heard, ReadOnlySpan<float> direct)
    {
        Biquad.Run(_before, heard);

        _silentSamples = heard.ContainsAnyExcept(0f) ? 0 : _silentSamples + heard.Length;
        Samples.Scale(heard, Drive);

        _clip.Run(heard);
        Biquad.Run(_after, heard);

        Samples.Scale(heard, Level);
    }

    /// <inheritdoc/>
    public void Reset()
    {
        _silentSamples = 0;
        _clip.Reset();
        Array.ForEach(_before, f => f.Reset());
        Array.ForEach(_after, f => f.Reset());
    }
}
