using System.Collections.Immutable;

namespace Passagework.Sound.Strings;

/// <summary>What one instrument's strings are: their losses, where they are struck and heard.</summary>
internal sealed record Voicing
{
    /// <summary>Open pitches the losses are given at: the six strings of standard tuning, low to high.</summary>
    private static readonly ImmutableArray<double> Opens = [40, 45, 50, 55, 59, 64];

    /// <summary>
    /// Nylon: friction, air and bending of the six strings as in the table of Woodhouse 2004; the ends so that open
    /// strings die like the calibrated classical guitar of Välimäki, Huopaniemi, Karjalainen &amp; Jánosy 1996.
    /// </summary>
    private static readonly ImmutableArray<LossLaw> NylonLosses =
    [
        new(0.0150, 1.2, 2e-5, 1.4e-12),
        new(0.0120, 0.9, 7e-5, 6.6e-13),
        new(0.0080, 1.2, 5e-5, 3.9e-13),
        new(0.0048, 1.7, 14e-5, 1.6e-12),
        new(0.0041, 1.2, 40e-5, 5.8e-13),
        new(0.0022, 1.5, 40e-5, 2.4e-13),
    ];

    /// <summary>Steel on a solid body: air by Stokes's law (Valette 1995), small losses at the ends.</summary>
    private static readonly ImmutableArray<LossLaw> SolidLosses =
    [
        new(0.0018, 0.30, 3.2e-4, 8e-14),
        new(0.0016, 0.32, 2.9e-4, 8e-14),
        new(0.0014, 0.36, 2.6e-4, 8e-14),
        new(0.0014, 0.45, 1.7e-4, 5e-14),
        new(0.0014, 0.50, 1.5e-4, 5e-14),
        new(0.0014, 0.60, 1.2e-4, 5e-14),
    ];

    /// <summary>Steel over a plate that radiates: the same strings, ends that give more away.</summary>
    private static readonly ImmutableArray<LossLaw> PlateLosses =
    [
        new(0.0060, 0.40, 4.5e-4, 2e-13),
        new(0.0052, 0.40, 4.2e-4, 2e-13),
        new(0.0046, 0.42, 3.0e-4, 1e-13),
        new(0.0038, 0.50, 2.2e-4, 1e-13),
        new(0.0034, 0.55, 1.8e-4, 8e-14),
        new(0.0032, 0.65, 1.5e-4, 8e-14),
    ];

    /// <summary>The heel of the hand: a fifth of a second left, high partials almost at once (assumed by us).</summary>
    public static LossLaw Palm { get; } = new(0.02, 30, 0.02, 0);

    /// <summary>A fretting hand that lies on the string: some hundredths of a second left (assumed by us).</summary>
    public static LossLaw Muted { get; } = new(0.25, 190, 0.02, 0);

    /// <summary>Flesh that comes to rest on the string at its end: the high partials die first (assumed by us).</summary>
    public static LossLaw Flesh { get; } = new(0, 0, 0.004, 0);

    /// <summary>Losses by string.</summary>
    public required ImmutableArray<LossLaw> Losses { get; init; }

    /// <summary>Usual distance of the stroke from the bridge as a share of the open string.</summary>
    public required double Position { get; init; }

    /// <summary>Distance of the pickup from the bridge as a share of the open string; zero without a pickup.</summary>
    public required double Pickup { get; init; }

    /// <summary>Factor on the rounding of all contacts.</summary>
    public required double Softness { get; init; }

    /// <summary>Share of what strings press on the bridge that reaches the other sounding strings.</summary>
    public required double Leak { get; init; }

    /// <summary>Factor on the noise of pick and fingers.</summary>
    public required double Noise { get; init; }

    /// <summary>The instrument of a sound.</summary>
    public static Voicing For(GuitarSound sound) =>
        sound switch
        {
            GuitarSound.Nylon => new()
            {
                Losses = NylonLosses,
                Position = 0.17,
                Pickup = 0,
                Softness = 1.15,
                Leak = 2.5e-4,
                Noise = 0.5,
            },
            GuitarSound.SteelString => new()
            {
                Losses = PlateLosses,
                Position = 0.2,
                Pickup = 0,
                Softness = 1,
                Leak = 2e-4,
                Noise = 1,
            },
            _ => new()
            {
                Losses = SolidLosses,
                Position = 0.18,
                Pickup = 0.17,
                Softness = 1,
                Leak = 4e-5,
                Noise = 0.7,
            },
        };

    /// <summary>The loss of a string by its open pitch and by whether a finger stops it.</summary>
    public LossLaw LossOf(double open, double key)
    {
        var nearest = 0;
        for (var i = 1; i < Opens.Length; i++)
        {
            if (Math.Abs(Opens[i] - open) < Math.Abs(Opens[nearest] - open))
            {
                nearest = i;
            }
        }

        // A fingertip behind a fret gives a little more way than the nut (assumed by us).
        var law = Losses[nearest];
        return key > open + 0.5 ? law with { Pass = law.Pass * 1.1 } : law;
    }
}
