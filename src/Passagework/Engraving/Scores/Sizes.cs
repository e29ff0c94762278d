using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Sizes of a score in staff spaces. What has a least size on paper grows relatively where the staff is small.</summary>
internal sealed class Sizes
{
    public Sizes(double staffMm, int strings, ScoreLetters letters)
    {
        SpaceMm = staffMm / 4;
        Strings = strings;
        DigitHeight = Math.Max(letters.Digit, letters.LeastDigitMm / SpaceMm);
        TabGap = Math.Max(1.5, 1.15 * DigitHeight);
        DigitEm = DigitHeight / TextFont.InkBox("1", Face.SansBold, 1).Height;
        Text = Math.Max(letters.Text, letters.LeastTextMm / SpaceMm);
        TabLetter = Math.Max(letters.TabLetter, letters.LeastTextMm / SpaceMm);
        Numeral = Math.Max(letters.Numeral, letters.LeastTextMm / SpaceMm);
        ChordEm = 2 / TextFont.InkBox("H", Face.SansMedium, 1).Height;
        FingerScale = Math.Max(1, letters.LeastFingerMm / SpaceMm);
    }

    /// <summary>One staff space in millimetres.</summary>
    public double SpaceMm { get; }

    /// <summary>Strings of the instrument.</summary>
    public int Strings { get; }

    /// <summary>Height of a tab number.</summary>
    public double DigitHeight { get; }

    /// <summary>Em of a tab number.</summary>
    public double DigitEm { get; }

    /// <summary>From one tab line to the next.</summary>
    public double TabGap { get; }

    /// <summary>From the first tab line to the last.</summary>
    public double TabHeight => TabGap * (Strings - 1);

    /// <summary>Em of words, counts and letters.</summary>
    public double Text { get; }

    /// <summary>Em of letters between the lines of a tab.</summary>
    public double TabLetter { get; }

    /// <summary>Em of position numerals and the tempo mark.</summary>
    public double Numeral { get; }

    /// <summary>Em of chord symbols; their capitals are two spaces high.</summary>
    public double ChordEm { get; }

    /// <summary>How much larger than in the font fingers are drawn.</summary>
    public double FingerScale { get; }

    /// <summary>Height of a string's line on the tab, from string 1.</summary>
    public double TabLine(int stringNumber) => TabGap * (stringNumber - 1);

    /// <summary>Width of a text in spaces.</summary>
    public static double Width(string text, Face face, double em) => TextFont.Width(text, face, em);
}

/// <summary>Thicknesses of lines in staff spaces, as the music font wants them.</summary>
internal static class Pens
{
    public static readonly double StaffLine = MusicFont.Default("staffLineThickness");
    public static readonly double Stem = MusicFont.Default("stemThickness");
    public static readonly double Beam = MusicFont.Default("beamThickness");
    public static readonly double BeamGap = MusicFont.Default("beamSpacing");
    public static readonly double Ledger = MusicFont.Default("legerLineThickness");
    public static readonly double LedgerOver = MusicFont.Default("legerLineExtension");
    public static readonly double SlurEnd = MusicFont.Default("slurEndpointThickness");
    public static readonly double SlurMiddle = MusicFont.Default("slurMidpointThickness");
    public static readonly double ThinBar = MusicFont.Default("thinBarlineThickness");
    public static readonly double ThickBar = MusicFont.Default("thickBarlineThickness");
    public static readonly double BarGap = MusicFont.Default("barlineSeparation");
    public static readonly double BarDotGap = MusicFont.Default("repeatBarlineDotSeparation");
    public static readonly double Bracket = MusicFont.Default("tupletBracketThickness");
    public static readonly double Arrow = MusicFont.Default("arrowShaftThickness");
    public static readonly double Ending = MusicFont.Default("repeatEndingLineThickness");

    /// <summary>Half the width of a black head: columns are counted from its centre.</summary>
    public static readonly double HalfHead = MusicFont.Glyph(Glyphs.NoteheadBlack).Advance / 2;
}
