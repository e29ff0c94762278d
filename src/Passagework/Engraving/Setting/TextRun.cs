using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Setting;

/// <summary>A stretch of a line in one face, or one sign of music.</summary>
/// <param name="Text">Letters; empty for a sign.</param>
/// <param name="Sign">Code point of a sign; 0 for letters.</param>
/// <param name="Face">The face of letters.</param>
internal readonly record struct TextRun(string Text, int Sign, Face Face)
{
    // Sizes and heights of signs among letters, in ems; chosen by eye.
    private const double SpaceEm = 0.26;
    private const double AccidentalEm = 0.27;
    private const double AfterSignEm = 0.04;

    public double WidthMm(TextStyle style) =>
        Sign == 0
            ? TextFont.Width(Text, Face, style.SizeMm, style.TrackingEm)
            : (MusicFont.Glyph(Sign).Advance * SpaceMm(style)) + (AfterSignEm * style.SizeMm);

    /// <summary>The mark of the run, its left end at a point of the baseline.</summary>
    public Mark MarkAt(Point at, TextStyle style, string id, string kind) =>
        Sign == 0
            ? new TextMark(Text, at, Face, style.SizeMm)
            {
                Id = id,
                Kind = kind,
                Ink = style.Ink,
                TrackingEm = style.TrackingEm,
            }
            : new GlyphMark(Sign, at.Moved(0, -RaisedMm(style)), SpaceMm(style))
            {
                Id = id,
                Kind = kind,
                Ink = style.Ink,
            };

    /// <summary>Adds a run to others; letters in the face of those before them join them.</summary>
    public static void Append(IList<TextRun> runs, TextRun run)
    {
        if (run.Sign == 0 && runs.Count > 0 && runs[^1] is { Sign: 0 } last && last.Face == run.Face)
        {
            runs[^1] = last with { Text = last.Text + run.Text };
        }
        else
        {
            runs.Add(run);
        }
    }

    private static double SpaceMm(TextStyle style) => SpaceEm * style.SizeMm;

    // Accidentals stand in the middle of the small letters, notes and their dots with the heads on the baseline.
    private double RaisedMm(TextStyle style) =>
        Sign is >= Glyphs.AccidentalFlat and <= Glyphs.AccidentalDoubleFlat
            ? AccidentalEm * style.SizeMm
            : -MusicFont.Glyph(Glyphs.MetNoteQuarterUp).Bottom * SpaceMm(style);
}
