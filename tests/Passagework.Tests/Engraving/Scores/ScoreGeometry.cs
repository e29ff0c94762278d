using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Reads the rules of geometry off the marks of a system. Each answers with what breaks it.</summary>
internal static class ScoreGeometry
{
    // A hundredth of a millimetre is no ink.
    private const double SlackMm = 0.01;

    // Drawn through or onto other marks by their nature: five lines, bar lines, curves from head to head.
    private static readonly HashSet<string> Lines =
    [
        "staff-line",
        "tab-line",
        "bar-line",
        "ledger",
        "slur",
        "tie",
        "tab-slur",
        "slide",
        "tab-slide",
        "sound-line",
    ];

    // Lines that nothing may touch but what they are joined to: the parts of one bend.
    private static readonly HashSet<string> Bends = ["bend", "tab-bend"];

    // Joined to a stem, so that they may touch stems and beams.
    private static readonly HashSet<string> OnStems = ["head", "flag"];

    /// <summary>Signs and texts that overlap each other, or a stem, beam or bracket.</summary>
    public static IEnumerable<string> Collisions(ScoreSystem system)
    {
        var marks = system
            .Marks.Where(mark => !Lines.Contains(mark.Kind))
            .Select(mark => (Mark: mark, Box: MarkBox.Of(mark).Grown(-SlackMm)))
            .OrderBy(mark => mark.Box.Left)
            .ToList();
        for (var i = 0; i < marks.Count; i++)
        {
            for (var j = i + 1; j < marks.Count && marks[j].Box.Left < marks[i].Box.Right; j++)
            {
                if (marks[i].Box.Overlaps(marks[j].Box) && Collide(marks[i].Mark, marks[j].Mark))
                {
                    yield return $"{marks[i].Mark.Id} and {marks[j].Mark.Id} in system {system.Number}";
                }
            }
        }
    }

    /// <summary>Marks outside the system's box.</summary>
    public static IEnumerable<string> Outside(ScoreSystem system) =>
        system
            .Marks.Where(mark =>
                !new Box(0, 0, system.WidthMm, system.HeightMm).Grown(0.1).Holds(MarkBox.Of(mark))
            )
            .Select(mark => $"{mark.Id} {MarkBox.Of(mark)} outside {system.WidthMm} × {system.HeightMm}");

    /// <summary>Heads, tab numbers and counts that are not centred on their column.</summary>
    public static IEnumerable<string> OffColumn(ScoreSystem system)
    {
        // In a chord one of two neighbouring heads stands a head's width to the side.
        var chords = system.Columns.Any(column => column.Heads.Length > 1);
        var aside = chords ? 2.0 : 0.1;
        var columns = system
            .Columns.SelectMany(column => column.Heads.Select(head => (head.Note, column.XMm)))
            .ToLookup(pair => pair.Note, pair => pair.XMm);
        return system
            .Marks.Where(mark => mark.Kind is "head" or "tab-number" or "tab-stem")
            .Where(mark =>
                !columns[mark.Note ?? -1]
                    .Any(x => Math.Abs(Middle(mark) - x) < (mark.Kind == "head" ? aside : 0.1))
            )
            .Select(mark => $"{mark.Id} at {Middle(mark)} mm is off its column");
    }

    /// <summary>Tab numbers that are not on their string, or whose string's line runs through them.</summary>
    public static IEnumerable<string> OffString(ScoreSystem system, int strings)
    {
        if (system.Tab is not { } tab)
        {
            yield break;
        }

        var gap = (tab.BottomMm - tab.TopMm) / (strings - 1);
        var places = system
            .Columns.SelectMany(column => column.Heads)
            .ToLookup(head => head.Note, head => head.Place.String);
        var lines = system.Marks.Where(mark => mark.Kind == "tab-line").Select(MarkBox.Of).ToList();
        foreach (var number in system.Marks.Where(mark => mark.Kind == "tab-number"))
        {
            var box = MarkBox.Of(number);
            var middle = (box.Top + box.Bottom) / 2;
            if (
                !places[number.Note ?? -1]
                    .Any(line => Math.Abs(tab.TopMm + (gap * (line - 1)) - middle) < 0.15)
            )
            {
                yield return $"{number.Id} at {middle} mm is off its string";
            }

            if (lines.Any(box.Overlaps))
            {
                yield return $"a line runs through {number.Id}";
            }
        }
    }

    /// <summary>Beams steeper or longer than the rule allows, and stems shorter than the least.</summary>
    public static IEnumerable<string> Beams(ScoreSystem system, double spaceMm)
    {
        foreach (var mark in system.Marks)
        {
            if (mark is PolygonMark { Kind: "beam" } beam)
            {
                // The bar reaches half a stem over its end stems.
                var rise = Math.Abs(beam.Corners[1].Y - beam.Corners[0].Y) / spaceMm;
                if (rise > 1.55)
                {
                    yield return $"{mark.Id} rises {rise} spaces";
                }
            }

            if (mark is LineMark { Kind: "stem" } stem && Math.Abs(stem.To.Y - stem.From.Y) / spaceMm < 2.3)
            {
                // The stem begins 0.168 spaces from the middle of the head.
                yield return $"{mark.Id} is {Math.Abs(stem.To.Y - stem.From.Y) / spaceMm} spaces long";
            }
        }
    }

    /// <summary>Names that two marks share.</summary>
    public static IEnumerable<string> SharedNames(Score score) =>
        score
            .Systems.SelectMany(system => system.Marks)
            .GroupBy(mark => mark.Id)
            .Where(group => group.Count() > 1)
            .Select(group => $"{group.Key} {group.Count()} times");

    private static bool Collide(Mark a, Mark b)
    {
        if (IsSign(a) && IsSign(b))
        {
            // Parts of a bend meet, and the waves of vibrato.
            if (a.Note == b.Note && a.Kind == b.Kind && (Bends.Contains(a.Kind) || a.Kind == "vibrato"))
            {
                return false;
            }

            // Figures of the metre are made to fill two spaces each and meet on the middle line.
            if (a.Kind == "time" && b.Kind == "time")
            {
                return false;
            }

            // A flag hangs on its own note; neighbouring heads of a chord share the stem's thickness.
            var sameNote = a.Note == b.Note && a.Note is not null;
            return !(
                sameNote && (a.Kind == "flag" || b.Kind == "flag" || (a.Kind == "head" && b.Kind == "head"))
            );
        }

        if (!IsSign(a) && !IsSign(b))
        {
            return false;
        }

        var (sign, drawn) = IsSign(a) ? (a, b) : (b, a);
        return !(OnStems.Contains(sign.Kind) && drawn.Kind is "stem" or "tab-stem" or "beam")
            && (drawn is not PolygonMark beam || Covers(beam, MarkBox.Of(sign).Grown(-SlackMm)));
    }

    private static bool IsSign(Mark mark) => mark is GlyphMark or TextMark || Bends.Contains(mark.Kind);

    // A beam is the area between two slanting lines.
    private static bool Covers(PolygonMark beam, Box box)
    {
        var (from, to) = (beam.Corners[0], beam.Corners[1]);
        var thickness = beam.Corners[^1].Y - from.Y;
        return Enumerable
            .Range(0, 9)
            .Select(i => Math.Clamp(box.Left + (box.Width * i / 8), from.X, to.X))
            .Select(x => from.Y + ((to.Y - from.Y) * (x - from.X) / (to.X - from.X)))
            .Any(top => top < box.Bottom && box.Top < top + thickness);
    }

    private static double Middle(Mark mark)
    {
        // A text is centred by its advance, which is what the eye lines up.
        if (mark is TextMark text)
        {
            return text.At.X;
        }

        var box = MarkBox.Of(mark);
        return (box.Left + box.Right) / 2;
    }
}
