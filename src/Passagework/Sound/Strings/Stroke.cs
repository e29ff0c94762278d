namespace Passagework.Sound.Strings;

/// <summary>An event of one string with its samples and what comes before and after worked out.</summary>
internal sealed class Stroke
{
    /// <summary>What was asked.</summary>
    public required StringEvent Event { get; init; }

    /// <summary>What it does to the string.</summary>
    public required Contact Contact { get; init; }

    /// <summary>Its place among all events, for the noise.</summary>
    public required int Ordinal { get; init; }

    /// <summary>The start as a sample, fractions allowed.</summary>
    public required double Start { get; init; }

    /// <summary>Whether the string begins anew, its past stilled.</summary>
    public required bool Fresh { get; init; }

    /// <summary>The first sample of the release; positive infinity when another event takes over or it rings on.</summary>
    public required double Release { get; init; }

    /// <summary>The sample at which the next stroke begins anew; positive infinity without one.</summary>
    public double Cut { get; set; } = double.PositiveInfinity;

    /// <summary>The event that goes on with the sounding string; null without one.</summary>
    public Stroke? Slur { get; set; }

    /// <summary>Key before this one on the string, for a finger that leaves it; null when fresh.</summary>
    public double? KeyBefore { get; init; }

    /// <summary>First sample of the stroke: a rounded start begins a little before it, but not before the music.</summary>
    public long First => Math.Max(0, (long)Math.Ceiling(Start - Lead));

    /// <summary>Samples by which the rounding begins earlier.</summary>
    public double Lead { get; init; }

    /// <summary>Samples in which the sound falls by 60 dB after the release.</summary>
    public required double Fade { get; init; }
}
