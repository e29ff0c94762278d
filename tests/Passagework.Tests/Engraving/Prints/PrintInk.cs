using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>Rules of geometry for a whole print: music, strip, key, neck and beat on one page.</summary>
internal static class PrintInk
{
    // A hundredth of a millimetre is no ink.
    private const double SlackMm = 0.01;

    // Signs of several strokes, whose strokes touch.
    private static readonly HashSet<string> SignKinds = ["move-sign", "key-sign"];

    // Bars of one note stand on the axis back to back.
    private static readonly HashSet<string> Bars =
    [
        "fretting-demand",
        "picking-demand",
        "fretting-excess",
        "picking-excess",
    ];

    public static IEnumerable<string> Wrong(Page page) =>
        [
            .. InkBoxes.Outside(page.Marks, new Box(0, 0, page.WidthMm, page.HeightMm)),
            .. InkBoxes.SharedNames(page.Marks),
            .. Overlaps(page),
        ];

    /// <summary>Words, numbers, signs, bars of the strip and dots of the neck that lie over each other.</summary>
    public static IEnumerable<string> Overlaps(Page page)
    {
        var marks = page
            .Marks.Where(StandsApart)
            .Select(mark => (Mark: mark, Box: MarkBox.Of(mark).Grown(-SlackMm)))
            .OrderBy(mark => mark.Box.Top)
            .ToList();
        for (var i = 0; i < marks.Count; i++)
        {
            for (var j = i + 1; j < marks.Count && marks[j].Box.Top < marks[i].Box.Bottom; j++)
            {
                if (marks[i].Box.Overlaps(marks[j].Box) && !BelongTogether(marks[i].Mark, marks[j].Mark))
                {
                    yield return $"{marks[i].Mark.Id} and {marks[j].Mark.Id}";
                }
            }
        }
    }

    private static bool StandsApart(Mark mark) =>
        mark is TextMark or GlyphMark
        || SignKinds.Contains(mark.Kind)
        || Bars.Contains(mark.Kind)
        || mark.Kind.StartsWith("dot-", StringComparison.Ordinal);

    private static bool BelongTogether(Mark a, Mark b)
    {
        // Figures of the metre are made to meet on the middle line.
        if ((a.Kind, b.Kind) == ("time", "time"))
        {
            return true;
        }

        if (a.Kind == "dot-text" || b.Kind == "dot-text")
        {
            return a.Kind.StartsWith("dot-", StringComparison.Ordinal)
                && b.Kind.StartsWith("dot-", StringComparison.Ordinal)
                && PlaceOf(a) == PlaceOf(b);
        }

        // A flag hangs on its own note; heads of a chord share the stem's thickness.
        var sameNote = a.Note is not null && a.Note == b.Note;
        return (sameNote && (a.Kind == "flag" || b.Kind == "flag" || (a.Kind == "head" && b.Kind == "head")))
            || (SignKinds.Contains(a.Kind) && SignKinds.Contains(b.Kind) && SignOf(a) == SignOf(b))
            || (Bars.Contains(a.Kind) && Bars.Contains(b.Kind) && sameNote);
    }

    // dot-6:5 and dot-text-6:5-0-0.
    private static string PlaceOf(Mark dot) => dot.Id.Split('-').First(part => part.Contains(':'));

    // key-6, key-6-cap, key-6-0 are of one sign; note-5-fretting-sign-0 and -1 are.
    private static string SignOf(Mark stroke) =>
        string.Join(
            '-',
            stroke.Id.Split('-').Take(stroke.Id.StartsWith("key-", StringComparison.Ordinal) ? 2 : 4)
        );
}
