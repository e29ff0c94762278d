using System.Collections.Immutable;

namespace Passagework.Sound.Strings;

/// <summary>A guitar's body: air and plate modes below a kilohertz, many weak ones above, heard by a microphone.</summary>
internal sealed class BodyOutput : IOutput
{
    /// <summary>
    /// Air, first and second plate modes of a classical guitar as commonly measured (Fletcher &amp; Rossing 1998, ch. 9:
    /// about 95–105, 190–215, 250–280, 390–430 Hz), and a spread of higher ones chosen by us.
    /// </summary>
    private static readonly ImmutableArray<(double Hertz, double Quality, double Gain)> NylonModes =
    [
        (100, 16, 0.75),
        (195, 22, 0.95),
        (262, 30, 0.4),
        (405, 32, 0.55),
        (480, 34, -0.3),
        (555, 36, 0.4),
        (645, 38, -0.35),
        (760, 40, 0.35),
        (905, 40, -0.3),
        (1090, 42, 0.28),
        (1310, 42, -0.24),
        (1620, 44, 0.2),
        (2050, 44, -0.18),
        (2600, 40, 0.16),
        (3300, 38, -0.12),
        (4300, 36, 0.08),
    ];

    private static readonly ImmutableArray<(double Hertz, double Quality, double Gain)> SteelModes =
    [
        (103, 18, 0.6),
        (182, 24, 0.8),
        (225, 30, 0.35),
        (335, 34, 0.45),
        (442, 36, -0.35),
        (548, 38, 0.4),
        (690, 40, -0.35),
        (850, 42, 0.32),
        (1020, 44, -0.3),
        (1280, 44, 0.28),
        (1600, 46, -0.26),
        (2020, 46, 0.26),
        (2550, 46, -0.24),
        (3300, 44, 0.22),
        (4400, 42, -0.2),
        (5800, 40, 0.16),
    ];

    private readonly ModeBank _modes;
    private readonly Biquad[] _straight;
    private readonly Biquad _last;
    private readonly float[] _copy = new float[StringVoice.Block];
    private readonly (float Straight, float Direct, float Level) _mix;

    /// <summary>The body of a nylon or steel string guitar.</summary>
    public BodyOutput(GuitarSound sound, int sampleRate)
    {
        var nylon = sound is GuitarSound.Nylon;
        _modes = new((nylon ? NylonModes : SteelModes).AsSpan(), sampleRate);
        _straight =
        [
            Biquad.HighShelf(nylon ? 1400 : 1500, nylon ? 10 : 14, sampleRate),
            Biquad.LowPass(nylon ? 5000 : 9000, 0.6, sampleRate),
        ];
        _last = Biquad.HighPass(60, 0.7, sampleRate);
        _mix = nylon ? (0.4f, 0.2f, 0.55f) : (0.4f, 0.25f, 0.5f);
    }

    /// <inheritdoc/>
    public int Latency => 0;

    /// <inheritdoc/>
    public bool Quiet => _modes.Quiet && _last.Quiet && Array.TrueForAll(_straight, f => f.Quiet);

    /// <inheritdoc/>
    public void Run(Span<float> heard, ReadOnlySpan<float> direct)
    {
        Samples.Add(direct, heard, _mix.Direct);

        var bridge = _copy.AsSpan(0, heard.Length);
        heard.CopyTo(bridge);
        Biquad.Run(_straight, heard);

        Samples.Scale(heard, _mix.Straight);

        _modes.Add(bridge, heard);
        _last.Run(heard);
        Samples.Scale(heard, _mix.Level);
    }

    /// <inheritdoc/>
    public void Reset()
    {
        _modes.Reset();
        _last.Reset();
        Array.ForEach(_straight, f => f.Reset());
    }
}
