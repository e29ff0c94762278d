namespace Passagework.Engraving.Fonts;

/// <summary>The signs of the music font that are used, by their names in SMuFL (W3C Music Notation Community Group).</summary>
public static partial class Glyphs
{
    // Clefs.
    /// <summary>SMuFL <c>gClef</c>.</summary>
    public const int GClef = 0xE050;

    /// <summary>SMuFL <c>gClef8vb</c>.</summary>
    public const int GClef8vb = 0xE052;

    /// <summary>SMuFL <c>fClef</c>.</summary>
    public const int FClef = 0xE062;

    /// <summary>SMuFL <c>fClef8vb</c>.</summary>
    public const int FClef8vb = 0xE064;

    /// <summary>SMuFL <c>clef8</c>.</summary>
    public const int Clef8 = 0xE07D;

    /// <summary>SMuFL <c>6stringTabClef</c>.</summary>
    public const int SixStringTabClef = 0xE06D;

    /// <summary>SMuFL <c>4stringTabClef</c>.</summary>
    public const int FourStringTabClef = 0xE06E;

    /// <summary>SMuFL <c>6stringTabClefTall</c>.</summary>
    public const int SixStringTabClefTall = 0xF40A;

    // Time signatures.
    /// <summary>SMuFL <c>timeSig0</c>.</summary>
    public const int TimeSig0 = 0xE080;

    /// <summary>SMuFL <c>timeSig1</c>.</summary>
    public const int TimeSig1 = 0xE081;

    /// <summary>SMuFL <c>timeSig2</c>.</summary>
    public const int TimeSig2 = 0xE082;

    /// <summary>SMuFL <c>timeSig3</c>.</summary>
    public const int TimeSig3 = 0xE083;

    /// <summary>SMuFL <c>timeSig4</c>.</summary>
    public const int TimeSig4 = 0xE084;

    /// <summary>SMuFL <c>timeSig5</c>.</summary>
    public const int TimeSig5 = 0xE085;

    /// <summary>SMuFL <c>timeSig6</c>.</summary>
    public const int TimeSig6 = 0xE086;

    /// <summary>SMuFL <c>timeSig7</c>.</summary>
    public const int TimeSig7 = 0xE087;

    /// <summary>SMuFL <c>timeSig8</c>.</summary>
    public const int TimeSig8 = 0xE088;

    /// <summary>SMuFL <c>timeSig9</c>.</summary>
    public const int TimeSig9 = 0xE089;

    /// <summary>SMuFL <c>timeSigCommon</c>.</summary>
    public const int TimeSigCommon = 0xE08A;

    /// <summary>SMuFL <c>timeSigCutCommon</c>.</summary>
    public const int TimeSigCutCommon = 0xE08B;

    /// <summary>SMuFL <c>timeSigPlus</c>.</summary>
    public const int TimeSigPlus = 0xE08C;

    // Note heads.
    /// <summary>SMuFL <c>noteheadWhole</c>.</summary>
    public const int NoteheadWhole = 0xE0A2;

    /// <summary>SMuFL <c>noteheadHalf</c>.</summary>
    public const int NoteheadHalf = 0xE0A3;

    /// <summary>SMuFL <c>noteheadBlack</c>.</summary>
    public const int NoteheadBlack = 0xE0A4;

    /// <summary>SMuFL <c>noteheadXBlack</c>.</summary>
    public const int NoteheadXBlack = 0xE0A9;

    /// <summary>SMuFL <c>noteheadDiamondBlack</c>.</summary>
    public const int NoteheadDiamondBlack = 0xE0DB;

    /// <summary>SMuFL <c>noteheadDiamondWhite</c>.</summary>
    public const int NoteheadDiamondWhite = 0xE0DD;

    /// <summary>SMuFL <c>noteheadParenthesisLeft</c>.</summary>
    public const int NoteheadParenthesisLeft = 0xE0F5;

    /// <summary>SMuFL <c>noteheadParenthesisRight</c>.</summary>
    public const int NoteheadParenthesisRight = 0xE0F6;

    /// <summary>SMuFL <c>noteheadSlashHorizontalEnds</c>.</summary>
    public const int NoteheadSlashHorizontalEnds = 0xE101;

    // Flags.
    /// <summary>SMuFL <c>flag8thUp</c>.</summary>
    public const int Flag8thUp = 0xE240;

    /// <summary>SMuFL <c>flag8thDown</c>.</summary>
    public const int Flag8thDown = 0xE241;

    /// <summary>SMuFL <c>flag16thUp</c>.</summary>
    public const int Flag16thUp = 0xE242;

    /// <summary>SMuFL <c>flag16thDown</c>.</summary>
    public const int Flag16thDown = 0xE243;

    /// <summary>SMuFL <c>flag32ndUp</c>.</summary>
    public const int Flag32ndUp = 0xE244;

    /// <summary>SMuFL <c>flag32ndDown</c>.</summary>
    public const int Flag32ndDown = 0xE245;

    /// <summary>SMuFL <c>flag64thUp</c>.</summary>
    public const int Flag64thUp = 0xE246;

    /// <summary>SMuFL <c>flag64thDown</c>.</summary>
    public const int Flag64thDown = 0xE247;

    /// <summary>SMuFL <c>flag8thUpShort</c>.</summary>
    public const int Flag8thUpShort = 0xF410;

    /// <summary>SMuFL <c>flag16thUpShort</c>.</summary>
    public const int Flag16thUpShort = 0xF413;

    /// <summary>SMuFL <c>flag32ndUpShort</c>.</summary>
    public const int Flag32ndUpShort = 0xF416;

    // Rests.
    /// <summary>SMuFL <c>restWhole</c>.</summary>
    public const int RestWhole = 0xE4E3;

    /// <summary>SMuFL <c>restHalf</c>.</summary>
    public const int RestHalf = 0xE4E4;

    /// <summary>SMuFL <c>restQuarter</c>.</summary>
    public const int RestQuarter = 0xE4E5;

    /// <summary>SMuFL <c>rest8th</c>.</summary>
    public const int Rest8th = 0xE4E6;

    /// <summary>SMuFL <c>rest16th</c>.</summary>
    public const int Rest16th = 0xE4E7;

    /// <summary>SMuFL <c>rest32nd</c>.</summary>
    public const int Rest32nd = 0xE4E8;

    /// <summary>SMuFL <c>rest64th</c>.</summary>
    public const int Rest64th = 0xE4E9;

    /// <summary>SMuFL <c>augmentationDot</c>.</summary>
    public const int AugmentationDot = 0xE1E7;

    // Tuplets.
    /// <summary>SMuFL <c>tuplet0</c>.</summary>
    public const int Tuplet0 = 0xE880;

    /// <summary>SMuFL <c>tuplet1</c>.</summary>
    public const int Tuplet1 = 0xE881;

    /// <summary>SMuFL <c>tuplet2</c>.</summary>
    public const int Tuplet2 = 0xE882;

    /// <summary>SMuFL <c>tuplet3</c>.</summary>
    public const int Tuplet3 = 0xE883;

    /// <summary>SMuFL <c>tuplet4</c>.</summary>
    public const int Tuplet4 = 0xE884;

    /// <summary>SMuFL <c>tuplet5</c>.</summary>
    public const int Tuplet5 = 0xE885;

    /// <summary>SMuFL <c>tuplet6</c>.</summary>
    public const int Tuplet6 = 0xE886;

    /// <summary>SMuFL <c>tuplet7</c>.</summary>
    public const int Tuplet7 = 0xE887;

    /// <summary>SMuFL <c>tuplet8</c>.</summary>
    public const int Tuplet8 = 0xE888;

    /// <summary>SMuFL <c>tuplet9</c>.</summary>
    public const int Tuplet9 = 0xE889;

    /// <summary>SMuFL <c>tupletColon</c>.</summary>
    public const int TupletColon = 0xE88A;

    // Accidentals.
    /// <summary>SMuFL <c>accidentalFlat</c>.</summary>
    public const int AccidentalFlat = 0xE260;

    /// <summary>SMuFL <c>accidentalNatural</c>.</summary>
    public const int AccidentalNatural = 0xE261;

    /// <summary>SMuFL <c>accidentalSharp</c>.</summary>
    public const int AccidentalSharp = 0xE262;

    /// <summary>SMuFL <c>accidentalDoubleSharp</c>.</summary>
    public const int AccidentalDoubleSharp = 0xE263;

    /// <summary>SMuFL <c>accidentalDoubleFlat</c>.</summary>
    public const int AccidentalDoubleFlat = 0xE264;

    /// <summary>SMuFL <c>accidentalParensLeft</c>.</summary>
    public const int AccidentalParensLeft = 0xE26A;

    /// <summary>SMuFL <c>accidentalParensRight</c>.</summary>
    public const int AccidentalParensRight = 0xE26B;

    // Bar lines and repeats.
    /// <summary>SMuFL <c>barlineSingle</c>.</summary>
    public const int BarlineSingle = 0xE030;

    /// <summary>SMuFL <c>barlineDouble</c>.</summary>
    public const int BarlineDouble = 0xE031;

    /// <summary>SMuFL <c>barlineFinal</c>.</summary>
    public const int BarlineFinal = 0xE032;

    /// <summary>SMuFL <c>repeatDots</c>.</summary>
    public const int RepeatDots = 0xE043;

    /// <summary>SMuFL <c>segno</c>.</summary>
    public const int Segno = 0xE047;

    /// <summary>SMuFL <c>coda</c>.</summary>
    public const int Coda = 0xE048;

    /// <summary>SMuFL <c>repeat1Bar</c>.</summary>
    public const int Repeat1Bar = 0xE500;

    // Staff groups.
    /// <summary>SMuFL <c>brace</c>.</summary>
    public const int Brace = 0xE000;

    /// <summary>SMuFL <c>bracketTop</c>.</summary>
    public const int BracketTop = 0xE003;

    /// <summary>SMuFL <c>bracketBottom</c>.</summary>
    public const int BracketBottom = 0xE004;
}
