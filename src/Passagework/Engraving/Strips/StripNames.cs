using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Strips;

/// <summary>The name of the hand and the first limit before the music, where they are in nobody's way.</summary>
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

    /// <summary>Adds them.</summary>
    /// <param name="marks">What is drawn of the strip so far.</param>
    /// <param name="signMiddle">Middle of the row of signs, in which the name stands where it is free.</param>
    public void DrawOn(List<Mark> marks, double signMiddle)
    {
        var name = Text("name", $"{side.Name} hand", Face.SmallCaps, signMiddle + (0.3 * _em)) with
        {
            Ink = side.Ink,
            At = new Point(0, signMiddle + (0.3 * _em)),
            Anchor = Anchor.Start,
        };
        var box = MarkBox.Of(name).Grown(space / 2);
        if (!marks.Exists(mark => MarkBox.Of(mark).Overlaps(box)))
        {
            marks.Add(name);
        }

        if (FirstLimit() is { } limit && limit * mmPerMs <= most)
        {
            // A little inside the line, away from the name; where both limits all but meet, away from the other hand's.
            var away = Math.Max((limit * mmPerMs) - (0.3 * _em), 0.5 * _em);
            var y = middle + (side.Direction * away) + (0.33 * _em);
            var label = Text(
                "limit-ms",
                System.FormattableString.Invariant($"{Math.Round(limit)} ms"),
                Face.Sans,
                y
            );
            if (MarkBox.Of(label).Left >= 0)
            {
                marks.Add(label);
            }
        }
    }

    private double? FirstLimit() =>
        system
            .Columns.SelectMany(column => column.Heads)
            .Select(head => side.Limits[head.Note])
            .FirstOrDefault(limit => limit is not null);

    private TextMark Text(string name, string text, Face face, double y) =>
        new(text, new Point(system.MusicStartMm - (0.4 * space), y), face, _em)
        {
            Id = $"system-{system.Number}-{side.Name}-{name}",
            Kind = "strip-name",
            Ink = Ink.Soft,
            Anchor = Anchor.End,
        };
}
