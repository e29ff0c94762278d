using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The sizes of a sheet's text, in points; nothing is smaller than 9.</summary>
internal static class SheetStyles
{
    private const double Tracking = 0.045;

    public static readonly TextStyle Purpose = TextStyle.InPoints(Face.SerifItalic, 12.75, 16.5);
    public static readonly TextStyle Person = TextStyle.InPoints(Face.Sans, 12, 15);
    public static readonly TextStyle Plan = TextStyle.InPoints(Face.Sans, 11.25, 13.5);
    public static readonly TextStyle Caption = TextStyle.InPoints(Face.Sans, 9.75, 12);
    public static readonly TextStyle Heading = TextStyle.InPoints(Face.SerifMedium, 12.5, 15);
    public static readonly TextStyle Note = TextStyle.InPoints(Face.Sans, 11, 13.5);
    public static readonly TextStyle GoOn = TextStyle.InPoints(Face.SerifItalic, 11.5, 14);
    public static readonly TextStyle Day = TextStyle.InPoints(Face.Sans, 11, 13.5);
    public static readonly TextStyle Of = TextStyle.InPoints(Face.SansItalic, 11, 13.5);
    public static readonly TextStyle Foot = TextStyle.InPoints(Face.SerifItalic, 10.5, 13.5);

    public static readonly TextStyle Label = TextStyle.InPoints(Face.SmallCaps, 11, 13.5) with
    {
        TrackingEm = Tracking,
    };

    /// <summary>Titles from large to small, each with the most lines it may take; the last is cut.</summary>
    public static readonly (TextStyle Style, int Lines)[] Titles =
    [
        (TextStyle.InPoints(Face.SerifMedium, 25.5, 27), 1),
        (TextStyle.InPoints(Face.SerifMedium, 20, 22), 2),
        (TextStyle.InPoints(Face.SerifMedium, 16, 18), 3),
    ];
}
