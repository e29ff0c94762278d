using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Strips;

/// <summary>The limit: all the time there is for each move, as a long-short dashed line that steps where it changes.</summary>
/// <param name="system">The system.</param>
/// <param name="notes">The notes that begin in it.</param>
/// <param name="side">The hand.</param>
/// <param name="frame">Where the strip stands.</param>
internal sealed class StripLimit(
    ScoreSystem system,
    List<(int Note, double X)> notes,
    Side side,
    StripFrame frame
)
{
    private readonly double?[] _limits = Limits(notes, side);

    /// <summary>Adds it; nothing is drawn where more time is left than the strip is high.</summary>
    public void DrawOn(List<Mark> marks)
    {
        var begun = 0;
        for (var i = 1; i <= notes.Count; i++)
        {
            if (i < notes.Count && Same(_limits[i], _limits[begun]))
            {
                continue;
            }

            if (_limits[begun] is { } limit && frame.Holds(limit))
            {
                marks.Add(Line(begun, i, frame.At(side, limit)));
            }

            begun = i;
        }
    }

    // A note without a limit, the first or a slurred one, takes that of the next one that has it, so that the line runs on.
    private static double?[] Limits(List<(int Note, double X)> notes, Side side)
    {
        var limits = new double?[notes.Count];
        double? next = null;
        for (var i = notes.Count - 1; i >= 0; i--)
        {
            next = side.Limits[notes[i].Note] ?? next;
            limits[i] = next;
        }

        return limits;
    }

    private static bool Same(double? one, double? other) =>
        one is { } a && other is { } b && Math.Abs(a - b) < 0.5;

    private LineMark Line(int first, int next, double y)
    {
        var left = first == 0 ? system.MusicStartMm : Between(first);
        var right = next == notes.Count ? system.MusicEndMm : Between(next);
        return new LineMark(new Point(left, y), new Point(right, y), 0.11 * frame.Space)
        {
            Id = System.FormattableString.Invariant($"note-{notes[first].Note}-{side.Name}-limit"),
            Kind = "limit",
            Ink = Ink.Main,
            DashMm = [frame.Space, 0.35 * frame.Space, 0.22 * frame.Space, 0.35 * frame.Space],
        };
    }

    private double Between(int index) => (notes[index - 1].X + notes[index].X) / 2;
}
