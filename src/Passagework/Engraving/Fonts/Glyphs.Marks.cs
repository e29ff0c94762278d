namespace Passagework.Engraving.Fonts;

/// <content>Signs beside notes and between words.</content>
public static partial class Glyphs
{
    // Articulation.
    /// <summary>SMuFL <c>articAccentAbove</c>.</summary>
    public const int ArticAccentAbove = 0xE4A0;

    /// <summary>SMuFL <c>articAccentBelow</c>.</summary>
    public const int ArticAccentBelow = 0xE4A1;

    /// <summary>SMuFL <c>articStaccatoAbove</c>.</summary>
    public const int ArticStaccatoAbove = 0xE4A2;

    /// <summary>SMuFL <c>articStaccatoBelow</c>.</summary>
    public const int ArticStaccatoBelow = 0xE4A3;

    /// <summary>SMuFL <c>articTenutoAbove</c>.</summary>
    public const int ArticTenutoAbove = 0xE4A4;

    /// <summary>SMuFL <c>articTenutoBelow</c>.</summary>
    public const int ArticTenutoBelow = 0xE4A5;

    /// <summary>SMuFL <c>articMarcatoAbove</c>.</summary>
    public const int ArticMarcatoAbove = 0xE4AC;

    /// <summary>SMuFL <c>articMarcatoBelow</c>.</summary>
    public const int ArticMarcatoBelow = 0xE4AD;

    /// <summary>SMuFL <c>fermataAbove</c>.</summary>
    public const int FermataAbove = 0xE4C0;

    // Strokes of the picking hand.
    /// <summary>SMuFL <c>stringsDownBow</c>.</summary>
    public const int StringsDownBow = 0xE610;

    /// <summary>SMuFL <c>stringsUpBow</c>.</summary>
    public const int StringsUpBow = 0xE612;

    // Fingers.
    /// <summary>SMuFL <c>fingering0</c>.</summary>
    public const int Fingering0 = 0xED10;

    /// <summary>SMuFL <c>fingering1</c>.</summary>
    public const int Fingering1 = 0xED11;

    /// <summary>SMuFL <c>fingering2</c>.</summary>
    public const int Fingering2 = 0xED12;

    /// <summary>SMuFL <c>fingering3</c>.</summary>
    public const int Fingering3 = 0xED13;

    /// <summary>SMuFL <c>fingering4</c>.</summary>
    public const int Fingering4 = 0xED14;

    /// <summary>SMuFL <c>fingeringTUpper</c>.</summary>
    public const int FingeringTUpper = 0xED16;

    /// <summary>SMuFL <c>fingering0Italic</c>.</summary>
    public const int Fingering0Italic = 0xED80;

    /// <summary>SMuFL <c>fingering1Italic</c>.</summary>
    public const int Fingering1Italic = 0xED81;

    /// <summary>SMuFL <c>fingering2Italic</c>.</summary>
    public const int Fingering2Italic = 0xED82;

    /// <summary>SMuFL <c>fingering3Italic</c>.</summary>
    public const int Fingering3Italic = 0xED83;

    /// <summary>SMuFL <c>fingering4Italic</c>.</summary>
    public const int Fingering4Italic = 0xED84;

    /// <summary>SMuFL <c>fingeringPLower</c>.</summary>
    public const int FingeringPLower = 0xED17;

    /// <summary>SMuFL <c>fingeringILower</c>.</summary>
    public const int FingeringILower = 0xED19;

    /// <summary>SMuFL <c>fingeringMLower</c>.</summary>
    public const int FingeringMLower = 0xED1A;

    /// <summary>SMuFL <c>fingeringALower</c>.</summary>
    public const int FingeringALower = 0xED1B;

    /// <summary>SMuFL <c>fingeringCLower</c>.</summary>
    public const int FingeringCLower = 0xED1C;

    // Guitar.
    /// <summary>SMuFL <c>guitarString0</c>.</summary>
    public const int GuitarString0 = 0xE833;

    /// <summary>SMuFL <c>guitarString1</c>.</summary>
    public const int GuitarString1 = 0xE834;

    /// <summary>SMuFL <c>guitarString2</c>.</summary>
    public const int GuitarString2 = 0xE835;

    /// <summary>SMuFL <c>guitarString3</c>.</summary>
    public const int GuitarString3 = 0xE836;

    /// <summary>SMuFL <c>guitarString4</c>.</summary>
    public const int GuitarString4 = 0xE837;

    /// <summary>SMuFL <c>guitarString5</c>.</summary>
    public const int GuitarString5 = 0xE838;

    /// <summary>SMuFL <c>guitarString6</c>.</summary>
    public const int GuitarString6 = 0xE839;

    /// <summary>SMuFL <c>guitarString7</c>.</summary>
    public const int GuitarString7 = 0xE83A;

    /// <summary>SMuFL <c>guitarString8</c>.</summary>
    public const int GuitarString8 = 0xE83B;

    /// <summary>SMuFL <c>guitarString9</c>.</summary>
    public const int GuitarString9 = 0xE83C;

    /// <summary>SMuFL <c>guitarGolpe</c>.</summary>
    public const int GuitarGolpe = 0xE842;

    /// <summary>SMuFL <c>guitarLeftHandTapping</c>.</summary>
    public const int GuitarLeftHandTapping = 0xE840;

    /// <summary>SMuFL <c>guitarRightHandTapping</c>.</summary>
    public const int GuitarRightHandTapping = 0xE841;

    /// <summary>SMuFL <c>guitarStrumUp</c>.</summary>
    public const int GuitarStrumUp = 0xE846;

    /// <summary>SMuFL <c>guitarStrumDown</c>.</summary>
    public const int GuitarStrumDown = 0xE847;

    /// <summary>SMuFL <c>guitarBarreFull</c>.</summary>
    public const int GuitarBarreFull = 0xE848;

    /// <summary>SMuFL <c>guitarBarreHalf</c>.</summary>
    public const int GuitarBarreHalf = 0xE849;

    /// <summary>SMuFL <c>guitarVibratoBarScoop</c>.</summary>
    public const int GuitarVibratoBarScoop = 0xE830;

    /// <summary>SMuFL <c>guitarVibratoBarDip</c>.</summary>
    public const int GuitarVibratoBarDip = 0xE831;

    // Wavy lines.
    /// <summary>SMuFL <c>wiggleVibrato</c>.</summary>
    public const int WiggleVibrato = 0xEAB0;

    /// <summary>SMuFL <c>guitarVibratoStroke</c>.</summary>
    public const int GuitarVibratoStroke = 0xEAB2;

    /// <summary>SMuFL <c>guitarWideVibratoStroke</c>.</summary>
    public const int GuitarWideVibratoStroke = 0xEAB3;

    /// <summary>SMuFL <c>wiggleArpeggiatoUp</c>.</summary>
    public const int WiggleArpeggiatoUp = 0xEAA9;

    // Octave signs.
    /// <summary>SMuFL <c>ottava</c>.</summary>
    public const int Ottava = 0xE510;

    /// <summary>SMuFL <c>ottavaAlta</c>.</summary>
    public const int OttavaAlta = 0xE511;

    /// <summary>SMuFL <c>ottavaBassaBa</c>.</summary>
    public const int OttavaBassaBa = 0xE513;

    // Notes within words.
    /// <summary>SMuFL <c>metNoteWhole</c>.</summary>
    public const int MetNoteWhole = 0xECA2;

    /// <summary>SMuFL <c>metNoteHalfUp</c>.</summary>
    public const int MetNoteHalfUp = 0xECA3;

    /// <summary>SMuFL <c>metNoteQuarterUp</c>.</summary>
    public const int MetNoteQuarterUp = 0xECA5;

    /// <summary>SMuFL <c>metNote8thUp</c>.</summary>
    public const int MetNote8thUp = 0xECA7;

    /// <summary>SMuFL <c>metNote16thUp</c>.</summary>
    public const int MetNote16thUp = 0xECA9;

    /// <summary>SMuFL <c>metAugmentationDot</c>.</summary>
    public const int MetAugmentationDot = 0xECB7;

    // Chord symbols.
    /// <summary>SMuFL <c>csymDiminished</c>.</summary>
    public const int CsymDiminished = 0xE870;

    /// <summary>SMuFL <c>csymHalfDiminished</c>.</summary>
    public const int CsymHalfDiminished = 0xE871;

    /// <summary>SMuFL <c>csymAugmented</c>.</summary>
    public const int CsymAugmented = 0xE872;

    /// <summary>SMuFL <c>csymMajorSeventh</c>.</summary>
    public const int CsymMajorSeventh = 0xE873;

    /// <summary>SMuFL <c>csymAccidentalFlat</c>.</summary>
    public const int CsymAccidentalFlat = 0xED60;

    /// <summary>SMuFL <c>csymAccidentalSharp</c>.</summary>
    public const int CsymAccidentalSharp = 0xED62;
}
