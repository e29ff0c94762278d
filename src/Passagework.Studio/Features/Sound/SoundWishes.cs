using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;

namespace Passagework.Studio.Features.Sound;

/// <summary>What the teacher has set for listening.</summary>
public sealed record SoundWishes
{
    /// <summary>Felt beats a minute.</summary>
    public double Bpm { get; init; } = 60;

    /// <summary>Whether the bars are played again and again.</summary>
    public bool Loops { get; init; } = true;

    /// <summary>The bars that are played, counted from 0; null for all.</summary>
    public BarRange? Bars { get; init; }

    /// <summary>Bars counted before the first time.</summary>
    public int CountInBars { get; init; } = 1;

    /// <summary>Where the click falls; null for none.</summary>
    public ClickPattern? Click { get; init; } = ClickPattern.Beats;

    /// <summary>Chords of the backing as typed, bars between lines; null for no backing.</summary>
    public string? Chords { get; init; }

    /// <summary>Groove of the backing; null for the one that goes with metre and swing.</summary>
    public Groove? Groove { get; init; }

    /// <summary>What sounds.</summary>
    public GuitarSound Guitar { get; init; } = GuitarSound.CleanElectric;

    /// <summary>Whether down, up and fingers sound different; else every note is struck alike.</summary>
    public bool StrokesHeard { get; init; } = true;
}
