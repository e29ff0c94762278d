namespace Passagework.Sound;

/// <summary>What sets the string going, or changes the note of a string that sounds already.</summary>
public enum StringAction
{
    /// <summary>Plectrum towards the floor.</summary>
    Down,

    /// <summary>Plectrum away from the floor.</summary>
    Up,

    /// <summary>The flesh and nail of the thumb.</summary>
    Thumb,

    /// <summary>The flesh and nail of a finger.</summary>
    Finger,

    /// <summary>A fretting finger comes down: the sounding string is shortened and softly struck.</summary>
    HammerOn,

    /// <summary>A fretting finger leaves sideways: the string is lengthened and plucked beside its upper end.</summary>
    PullOff,

    /// <summary>The fretting finger travels to the note, fret by fret, and arrives at the event's time.</summary>
    Slide,

    /// <summary>Plectrum on a string that the fretting hand keeps from sounding.</summary>
    Dead,

    /// <summary>Plectrum dragged over a muted string on the way to a note: a dead note, softer.</summary>
    Rake,
}
