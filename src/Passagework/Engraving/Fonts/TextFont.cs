using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Foundation;

namespace Passagework.Engraving.Fonts;

/// <summary>The faces of the page: how much room a text takes. Figures of the sans faces are lining and equally wide.</summary>
public static class TextFont
{
    private const int MostNamed = 5;

    /// <summary>From the start to where a next letter would begin, in millimetres.</summary>
    /// <param name="text">One line of plain characters.</param>
    /// <param name="face">The face.</param>
    /// <param name="sizeMm">Height of the em.</param>
    /// <param name="trackingEm">Space after each letter, in ems.</param>
    public static double Width(string text, Face face, double sizeMm, double trackingEm = 0) =>
        TextLine.Set(text, face, trackingEm).WidthEm * sizeMm;

    /// <summary>
    /// The box of a text's ink in millimetres, relative to the left end of its baseline, y downwards; all 0 when
    /// nothing is drawn.
    /// </summary>
    public static Box InkBox(string text, Face face, double sizeMm, double trackingEm = 0) =>
        TextLine.Set(text, face, trackingEm).InkAt(sizeMm);

    /// <summary>The letters of a text that the face has no glyph for, named; null when it has all.</summary>
    public static Fault? Missing(string text, Face face)
    {
        var missing = TextLine.Set(text, face, 0).Missing;
        if (missing.IsEmpty)
        {
            return null;
        }

        var named = missing
            .Take(MostNamed)
            .Select(letter =>
                letter.Value < ' ' || Rune.IsControl(letter) ? Code(letter) : $"{letter} ({Code(letter)})"
            );
        var rest = missing.Length > MostNamed ? $" and {missing.Length - MostNamed} more" : "";
        return new Fault(
            $"the page's typeface has no {string.Join(", ", named)}{rest}",
            Quote.Short(text),
            "letters of Latin, Greek or Cyrillic script, Vietnamese too, on one line"
        );
    }

    private static string Code(Rune letter) =>
        string.Create(CultureInfo.InvariantCulture, $"U+{letter.Value:X4}");
}
