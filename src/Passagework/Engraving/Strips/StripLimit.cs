using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Strips;

/// <summary>The limit: all the time there is for each move, as a long-short dashed line that steps where it changes.</summary>
internal sealed class StripLimit(
    ScoreSystem system,
    List<(int Note, double X)> notes,
    Side side,
    double middle,
    double mmPerMs,
    double most,
    double space
)
{
    /// <summary>Adds it; nothing is drawn where more time is left than the strip is high.</summary>
    public void DrawOn(List<Mark> marks)
    {
        var begun = 0;
        for (var i = 1; i <= notes.Count; i++)
        {
            if (i < notes.Count && Same(LimitOf(i), LimitOf(begun)))
            {
                continue;
            }

            if (LimitOf(begun) is { } limit && limit * mmPerMs <= most + 0.01)
            {
                marks.Add(Line(begun, i, middle + (side.Direction * limit * mmPerMs)));
            }

            begun = i;
        }
    }

    // A note without a limit, the first or a slurred one, takes that of the next one that has it, so that the line runs on.
    private double? LimitOf(int index) =>
        Enumerable
            .Range(index, notes.Count - index)
            .Select(later => side.Limits[notes[later].Note])
            .FirstOrDefault(limit => limit is not null);

    private static bool Same(double? one, double? other) =>
        one is { } a && other is { } b && Math.Abs(a - b) < 0.5;

    private LineMark Line(int first, int next, double y)
    {
        var left = first == 0 ? system.MusicStartMm : Between(first);
        var right = next == notes.Count ? system.MusicEndMm : Between(next);
        return new LineMark(new Point(left, y), new Point(right, y), 0.11 * space)
        {
            Id = System.FormattableString.Invariant($"note-{notes[first].Note}-{side.Name}-limit"),
            Kind = "limit",
            Ink = Ink.Main,
            DashMm = [space, 0.35 * space, 0.22 * space, 0.35 * space],
        };
    }

    private double Between(int index) => (notes[index - 1].X + notes[index].X) / 2;
}
