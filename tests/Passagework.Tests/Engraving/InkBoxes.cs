using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving;

/// <summary>Rules of geometry that hold for every picture, read off its marks.</summary>
internal static class InkBoxes
{
    // Marks are placed to the nearest double; a thousandth of a millimetre is no ink.
    private const double SlackMm = 0.001;

    /// <summary>Pairs of marks whose ink overlaps, among those that a picture must keep apart.</summary>
    public static IEnumerable<string> Overlaps(IEnumerable<Mark> marks)
    {
        var boxes = marks.Select(mark => (mark.Id, Box: MarkBox.Of(mark).Grown(-SlackMm))).ToList();
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
            {
                if (boxes[i].Box.Overlaps(boxes[j].Box))
                {
                    yield return $"{boxes[i].Id} and {boxes[j].Id}";
                }
            }
        }
    }

    /// <summary>Marks whose ink leaves a box.</summary>
    public static IEnumerable<string> Outside(IEnumerable<Mark> marks, Box box) =>
        marks
            .Where(mark => !box.Grown(SlackMm).Holds(MarkBox.Of(mark)))
            .Select(mark => $"{mark.Id} {MarkBox.Of(mark)}");

    /// <summary>Names that two marks share.</summary>
    public static IEnumerable<string> SharedNames(IEnumerable<Mark> marks) =>
        marks.GroupBy(mark => mark.Id).Where(group => group.Count() > 1).Select(group => group.Key);

    /// <summary>Height of the em of a text, in printer's points.</summary>
    public static double Points(TextMark text) => text.SizeMm * 72 / 25.4;
}
