namespace Passagework.Engraving.Sheets;

/// <summary>The part of the paper that is printed on: 180 by 249 mm, which both papers hold inside margins of 15 mm.</summary>
internal static class SheetBox
{
    public const double WidthMm = 180;
    public const double HeightMm = 249;
    public const double TopMm = 15;

    /// <summary>The foot stands in the lower margin, its baseline so far from the edge; printers lose 4 to 6 mm.</summary>
    public const double FootMm = 11;

    public static (double Width, double Height) Size(Paper paper) =>
        paper switch
        {
            Paper.A4 => (210, 297),
            Paper.Letter => (215.9, 279.4),
            _ => throw new ArgumentOutOfRangeException(nameof(paper), paper, "no such paper"),
        };

    public static double LeftMm(Paper paper) => (Size(paper).Width - WidthMm) / 2;
}
