using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Which sign a note value is written with.</summary>
internal static class HeadGlyphs
{
    /// <summary>Longest value that is drawn: two whole notes.</summary>
    public const int LongestHalvings = -1;

    // SMuFL, flags and rests: eighth to 1024th up and down by turns from U+E240; breve to 1024th from U+E4E2.
    private const int RestBreve = Glyphs.RestWhole - 1;
    private const int HeadBreve = Glyphs.NoteheadWhole - 2;

    /// <summary>The head or the rest.</summary>
    public static int Of(Column column)
    {
        var halvings = column.Written.Value.Halvings;
        if (column.IsRest)
        {
            return column.Written.WholeBar ? Glyphs.RestWhole : RestBreve + halvings - LongestHalvings;
        }

        return halvings switch
        {
            LongestHalvings => HeadBreve,
            0 => Glyphs.NoteheadWhole,
            1 => Glyphs.NoteheadHalf,
            _ => Glyphs.NoteheadBlack,
        };
    }

    /// <summary>The flags at a stem's end.</summary>
    public static int Flag(int flags, bool up) =>
        (up ? Glyphs.Flag8thUp : Glyphs.Flag8thDown) + (2 * (flags - 1));
}
