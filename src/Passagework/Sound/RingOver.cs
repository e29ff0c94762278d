namespace Passagework.Sound;

/// <summary>How a string stops once the finger leaves it.</summary>
/// <param name="Seconds">Time from the event's end in which the sound falls by 60 dB; above zero.</param>
public sealed record RingOver(double Seconds)
{
    /// <summary>The finger lifts and damps the string with its flesh (assumed by us).</summary>
    public static RingOver Lift { get; } = new(0.05);

    /// <summary>The finger rolls to the next string and lets the old one fade (assumed by us).</summary>
    public static RingOver Roll { get; } = new(0.16);
}
