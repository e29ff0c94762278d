using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Screens;

/// <summary>Names the rows of a system in the margin left of it, as instruments are named in a full score.</summary>
/// <param name="frame">How millimetres become pixels.</param>
internal sealed class ScreenMargin(PxFrame frame)
{
    private const double SizePx = 15;
    private const double LeadingPx = 18;
    private const double GapPx = 20;
    private const double TrackingEm = 0.045;

    private static readonly string[] Names =
    [
        "strokes",
        "staff",
        "tab",
        "count",
        "fretting",
        "picking",
        "hand",
    ];

    /// <summary>Width of the margin: the widest name and the way to the staff.</summary>
    public static double WidthPx { get; } = Math.Ceiling(Names.Max(Width) + GapPx);

    /// <summary>The names of the rows that are there; they end at 0, in millimetres.</summary>
    public IEnumerable<Mark> Draw(ScoreSystem system)
    {
        var rows = new[]
        {
            ("strokes", MiddleOf(system, "stroke"), Ink.Picking),
            ("staff", Middle(system.Staff), Ink.Main),
            ("tab", Middle(system.Tab), Ink.Main),
            ("count", MiddleOf(system, "count"), Ink.Main),
        };
        foreach (var (name, middle, ink) in rows)
        {
            if (middle is { } y)
            {
                yield return Word(system, name, frame.Length(y), ink);
            }
        }

        if (system.Strip is { } strip)
        {
            foreach (var mark in Hand(system, "fretting", (strip.TopMm, strip.MiddleMm), Ink.Fretting))
                yield return mark;
            foreach (var mark in Hand(system, "picking", (strip.MiddleMm, strip.BottomMm), Ink.Picking))
                yield return mark;
        }
    }

    private static double Width(string name) => TextFont.Width(name, Face.SmallCaps, SizePx, TrackingEm);

    private static double? Middle(StaffBand? band) => (band?.TopMm + band?.BottomMm) / 2;

    private static double? MiddleOf(ScoreSystem system, string kind)
    {
        var boxes = system.Marks.Where(mark => mark.Kind == kind).Select(MarkBox.Of).ToList();
        return boxes.Count == 0 ? null : (boxes.Min(box => box.Top) + boxes.Max(box => box.Bottom)) / 2;
    }

    private IEnumerable<Mark> Hand(ScoreSystem system, string name, (double Top, double Bottom) half, Ink ink)
    {
        var middle = frame.Length((half.Top + half.Bottom) / 2);
        yield return Word(system, name, middle - (LeadingPx / 2), ink);
        yield return Word(system, "hand", middle + (LeadingPx / 2), ink) with
        {
            Id = $"system-{system.Number}-name-{name}-hand",
        };
    }

    // The middle of its small capitals at a height in pixels.
    private TextMark Word(ScoreSystem system, string name, double middlePx, Ink ink)
    {
        var box = TextFont.InkBox("x", Face.SmallCaps, SizePx);
        var y = middlePx - ((box.Top + box.Bottom) / 2);
        // Letter-space after the last letter is none of the word.
        const double x = (TrackingEm * SizePx) - GapPx;
        return new TextMark(
            name,
            new Point(x / frame.PxPerMm, y / frame.PxPerMm),
            Face.SmallCaps,
            SizePx / frame.PxPerMm
        )
        {
            Id = $"system-{system.Number}-name-{name}",
            Kind = "row-name",
            Ink = ink,
            Anchor = Anchor.End,
            TrackingEm = TrackingEm,
        };
    }
}
