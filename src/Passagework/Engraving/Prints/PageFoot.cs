using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Prints;

/// <summary>Puts figures under the music of the last page, and onto further pages where they do not fit.</summary>
internal sealed class PageFoot(PaperBox paper, double apartMm)
{
    public List<Page> Add(ImmutableArray<Page> pages, ImmutableArray<Figure> figures)
    {
        var all = pages.ToList();
        var y = LowestInk(all[^1]) + apartMm;
        foreach (var figure in figures)
        {
            if (y + figure.HeightMm > paper.TopMm + paper.RoomMm)
            {
                all.Add(new Page(paper.WidthMm, paper.HeightMm, []));
                y = paper.TopMm;
            }

            all[^1] = all[^1] with { Marks = all[^1].Marks.AddRange(figure.At(new Point(paper.LeftMm, y))) };
            y += figure.HeightMm + apartMm;
        }

        return all;
    }

    private static double LowestInk(Page page) => page.Marks.Max(mark => MarkBox.Of(mark).Bottom);
}
