namespace Passagework.Rhythm;

/// <summary>What makes a note loud.</summary>
public enum AccentMode
{
    /// <summary>Place in the bar and start of a group; for a line that should show both.</summary>
    Both,

    /// <summary>Place in the bar only.</summary>
    Meter,

    /// <summary>Start of a group only; for practising against the beat, with the metre in the click.</summary>
    Groups,

    /// <summary>Nothing: every note the same.</summary>
    None,
}

/// <summary>How loud a note is played. The amounts are chosen by us.</summary>
public static class AccentMap
{
    private const int Plain = 64;

    /// <summary>MIDI velocity, 1 to 127. A written accent counts in every mode but <see cref="AccentMode.None"/>.</summary>
    /// <param name="mode">What counts.</param>
    /// <param name="weight">The weight of the pulse, from 1 (<see cref="MetricalTree.Weights"/>).</param>
    /// <param name="isGroupStart">Whether a group starts here.</param>
    /// <param name="isAccented">Whether an accent is written.</param>
    public static int Velocity(AccentMode mode, int weight, bool isGroupStart, bool isAccented)
    {
        var meter = mode is AccentMode.Both or AccentMode.Meter ? 8 * (weight - 1) : 0;
        var group = mode is AccentMode.Both or AccentMode.Groups && isGroupStart ? 20 : 0;
        var written = mode != AccentMode.None && isAccented ? 8 : 0;
        return Math.Clamp(Plain + meter + group + written, 1, 127);
    }
}
