namespace Passagework.Sound.Backing;

/// <summary>What the backing plays.</summary>
/// <param name="Chords">The chords, again and again from the first bar after the count-in.</param>
/// <param name="Groove">The feel.</param>
/// <param name="Seed">Chooses among the figures that fit.</param>
public sealed record BandPlan(ChordProgression Chords, Groove Groove, ulong Seed = 1);

/// <summary>What sounds in the backing.</summary>
public enum BandSound
{
    /// <summary>Bass drum.</summary>
    Kick,

    /// <summary>Snare drum.</summary>
    Snare,

    /// <summary>Closed hi-hat.</summary>
    Hat,

    /// <summary>Ride cymbal.</summary>
    Ride,

    /// <summary>Bass.</summary>
    Bass,

    /// <summary>One tone of a chord.</summary>
    Stab,
}

/// <summary>One note of the backing.</summary>
/// <param name="Seconds">When it begins.</param>
/// <param name="EndSeconds">When it is damped; positive infinity lets it ring.</param>
/// <param name="Sound">What sounds.</param>
/// <param name="Key">The MIDI key; 0 for drums.</param>
/// <param name="Strength">0 to 1.</param>
public readonly record struct BandNote(
    double Seconds,
    double EndSeconds,
    BandSound Sound,
    int Key,
    double Strength
);
