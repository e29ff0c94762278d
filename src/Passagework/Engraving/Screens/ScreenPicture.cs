using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Foundation;

namespace Passagework.Engraving.Screens;

/// <summary>A picture for a page; the page around it holds <see cref="ScreenDefs"/> once.</summary>
/// <param name="Svg">One <c>svg</c> element with width and height; nothing in it takes the pointer.</param>
/// <param name="WidthPx">Its width.</param>
/// <param name="HeightPx">Its height.</param>
/// <param name="Caption">How to read it; empty for a picture that stands in a table or list.</param>
/// <param name="Description">What is in it, in one sentence for those who do not see it.</param>
public sealed record ScreenPicture(
    string Svg,
    double WidthPx,
    double HeightPx,
    string Caption,
    string Description
)
{
    /// <summary>A figure at so many pixels a millimetre; refused where a mark cannot be drawn.</summary>
    internal static Outcome<ScreenPicture> Of(Figure figure, double pxPerMm) =>
        Proof
            .Of(figure.ToPage())
            .Then<ScreenPicture>(marks =>
            {
                var elements = new CompactSvg(new PxFrame(pxPerMm));
                foreach (var mark in marks)
                {
                    elements.Add(mark);
                }

                var size = (Math.Ceiling(figure.WidthMm * pxPerMm), Math.Ceiling(figure.HeightMm * pxPerMm));
                var places = new StringBuilder();
                NeckPlaces.Write(places, figure.Marks, pxPerMm);
                return Of(elements, size, figure.Caption, figure.Description, places.ToString());
            });

    /// <summary>A picture of elements, with what a page needs over them.</summary>
    internal static ScreenPicture Of(
        CompactSvg elements,
        (double Width, double Height) size,
        string caption,
        string description,
        string over = ""
    )
    {
        var svg = new StringBuilder();
        ScreenSvg.Open(svg, "", size, description);
        ScreenSvg.WriteMarks(svg, elements);
        return new ScreenPicture(
            svg.Append(over).Append("</svg>").ToString(),
            size.Width,
            size.Height,
            caption,
            description
        );
    }
}
