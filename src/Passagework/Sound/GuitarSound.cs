namespace Passagework.Sound;

/// <summary>The four instruments the string model plays.</summary>
public enum GuitarSound
{
    /// <summary>Solid body, one pickup, no distortion.</summary>
    CleanElectric,

    /// <summary>Flat-top with steel strings, heard through its body.</summary>
    SteelString,

    /// <summary>Classical guitar with nylon strings, heard through its body.</summary>
    Nylon,

    /// <summary>Solid body into an amplifier that clips softly, heard through a loudspeaker.</summary>
    DrivenElectric,
}
