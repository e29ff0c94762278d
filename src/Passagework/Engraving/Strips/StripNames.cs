using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Strips;

/// <summary>Names of the hands and the first limit in the margin before the music, as far as they fit there.</summary>
internal sealed class StripNames(
    ScoreSystem system,
    Side side,
    double middle,
    double mmPerMs,
    double most,
    double space
)
{
    private const double PointMm = 25.4 / 72;
    private readonly double _em = Math.Max(9 * PointMm, 1.8 * space);

    public void DrawOn(List<Mark> marks)
    {
        var room = system.MusicStartMm - (0.5 * space);
        if (TextFont.Width(side.Name, Face.SmallCaps, _em) > room)
        {
            return;
        }

        var base1 = middle + (side.Direction * most / 2) + (0.35 * _em) - (0.55 * _em);
        marks.Add(Text("name", side.Name, Face.SmallCaps, side.Ink, base1));
        marks.Add(Text("hand", "hand", Face.SmallCaps, side.Ink, base1 + (1.05 * _em)));
        if (FirstLimit() is { } limit && limit * mmPerMs <= most && IsClear(limit, base1))
        {
            var label = System.FormattableString.Invariant($"{Math.Round(limit)} ms");
            if (TextFont.Width(label, Face.Sans, _em) <= room)
            {
                marks.Add(Text("limit", label, Face.Sans, Ink.Soft, LimitBase(limit)));
            }
        }
    }

    private double? FirstLimit() =>
        system
            .Columns.SelectMany(column => column.Heads)
            .Select(head => side.Limits[head.Note])
            .FirstOrDefault(limit => limit is not null);

    private double LimitBase(double limit) => middle + (side.Direction * limit * mmPerMs) + (0.33 * _em);

    // The name takes two lines around the middle of its half.
    private bool IsClear(double limit, double base1)
    {
        var y = LimitBase(limit);
        return y < base1 - (0.9 * _em) || y - (0.75 * _em) > base1 + (1.4 * _em);
    }

    private TextMark Text(string name, string text, Face face, Ink ink, double y) =>
        new(text, new Point(system.MusicStartMm - (0.5 * space), y), face, _em)
        {
            Id = $"system-{system.Number}-{side.Name}-{name}",
            Kind = "strip-name",
            Ink = ink,
            Anchor = Anchor.End,
            TrackingEm = 0,
        };
}
