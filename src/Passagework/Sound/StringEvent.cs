using System.Collections.Immutable;

namespace Passagework.Sound;

/// <summary>What happens to one string at an exact time.</summary>
public sealed record StringEvent
{
    /// <summary>
    /// Seconds from the start of the music at which the string is let go; for hammer-on, pull-off and slide the
    /// instant at which the new note sounds.
    /// </summary>
    public required double Seconds { get; init; }

    /// <summary>The string; 1 is nearest the floor.</summary>
    public required int String { get; init; }

    /// <summary>What sounds, as a MIDI key; fractions are pitches between.</summary>
    public required double Key { get; init; }

    /// <summary>When the finger lifts or the string is damped; positive infinity lets it ring.</summary>
    /// <remarks>The next event of the string ends this one in any case. A hammer-on, pull-off or slide takes over a
    /// string that still sounds; every other action begins anew.</remarks>
    public required double EndSeconds { get; init; }

    /// <summary>What is done.</summary>
    public StringAction Action { get; init; } = StringAction.Down;

    /// <summary>From 0 (the string is only free to sound along with others) to 1 (as hard as it goes).</summary>
    public double Strength { get; init; } = 0.7;

    /// <summary>Whether the heel of the picking hand rests on the string beside the bridge.</summary>
    public bool PalmMuted { get; init; }

    /// <summary>How the note stops at its end; null is <see cref="RingOver.Lift"/>.</summary>
    public RingOver? Release { get; init; }

    /// <summary>
    /// Bend as points of seconds after the event's start and semitones above the key, in order of time; between two
    /// points the pitch moves smoothly, before the first it starts from the key, after the last it stays.
    /// </summary>
    public ImmutableArray<(double Seconds, double Semitones)> Bend { get; init; } = [];

    /// <summary>Vibrato: how often a second the pitch rises, and how many semitones it rises above the key.</summary>
    public (double Hz, double Semitones)? Vibrato { get; init; }

    /// <summary>
    /// Where the string is struck, as a share of the open string's length from the bridge, within (0, 0.5]; null is
    /// the place usual for the sound.
    /// </summary>
    public double? Position { get; init; }

    /// <summary>Index of the note in its line, for time maps; null for what is no note of the line.</summary>
    public int? Note { get; init; }
}
