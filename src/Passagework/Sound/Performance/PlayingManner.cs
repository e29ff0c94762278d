namespace Passagework.Sound.Performance;

/// <summary>How long notes are left sounding, and whether the picking hand damps them.</summary>
public enum PlayingManner
{
    /// <summary>Each note for its written length.</summary>
    Plain,

    /// <summary>For their written length, the heel of the picking hand on the strings.</summary>
    PalmMuted,

    /// <summary>For half of their written length.</summary>
    Staccato,

    /// <summary>Until the string is needed again, or its finger or the hand has to move.</summary>
    LetRing,
}
