using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws how the groups of a line lie against the beat.</summary>
/// <remarks>
/// A row is a beat, a column a feel; a large dot starts a group, small dots are its other notes, a ring is the first
/// group start that falls on a beat again. Rows are named by the beats of the bar; a line parts the bars.
/// </remarks>
/// <example>
/// <c>BeatPicture.Draw(line, new BeatOptions { Feels = BeatOptions.Plain })</c>
/// </example>
public static class BeatPicture
{
    private const double NumbersMm = 8;
    private const double BetweenMm = 7;
    private const double EdgeMm = 3.5;
    private const double FootMm = 5.6;

    /// <summary>One round of the groups in each feel; refused where a line has no groups made of pulses.</summary>
    public static Outcome<Figure> Draw(Line line, BeatOptions options)
    {
        var own = new Feel(line.Recipe.Rhythm.NotesPerBeat, line.Recipe.Rhythm.Swing);
        ImmutableArray<Feel> feels = options.Feels.IsDefaultOrEmpty ? [own] : options.Feels;
        return feels.Any(feel => feel.NotesPerBeat is < 1 or > 8) || options.MostBeats < 1
            ? new Fault(
                "a feel of no notes to a beat, or of too many",
                Right: "1 to 8 notes to a beat, 1 beat or more"
            )
            : GroupRound
                .Of(line)
                .Then<Figure>(round =>
                    Draw(round, line.Recipe.Rhythm.Meter, own, options with { Feels = feels })
                );
    }

    private static Figure Draw(GroupRound round, Meter meter, Feel own, BeatOptions options)
    {
        var marks = new List<Mark>();
        var columns = options.Feels.Select(feel => new BeatRows(round, feel, options.MostBeats)).ToList();
        var rows = columns.Max(column => column.Beats + 1);
        var x = NumbersMm;
        for (var i = 0; i < columns.Count; i++)
        {
            marks.AddRange(columns[i].Marks().Select(mark => mark.Moved(x, Top)));
            marks.Add(Foot(options.Feels[i], own, new Point(x + (columns[i].WidthMm / 2), FootY(rows)), i));
            x += columns[i].WidthMm + BetweenMm;
        }

        var width = x - BetweenMm + EdgeMm;
        marks.InsertRange(0, Beats(rows, meter, width));
        if (options.Feels.Length > 1 && options.Feels.IndexOf(own) is var chosen && chosen >= 0)
        {
            var left =
                NumbersMm
                + options
                    .Feels.Take(chosen)
                    .Sum(feel => ((feel.NotesPerBeat - 1) * BeatRows.PulseMm) + BetweenMm);
            marks.Insert(0, Band(left, columns[chosen].WidthMm, FootY(rows) + (FootMm / 2)));
        }

        var words = new BeatWords(round, meter, own, options);
        return new Figure(width, FootY(rows) + (FootMm / 2), [.. marks])
        {
            Caption = words.Caption(),
            Description = words.Description(),
        };
    }

    // The ground of the exercise's own feel; its bold number says the same.
    private static PolygonMark Band(double left, double width, double bottom)
    {
        var (from, to) = (left - (BetweenMm / 2), left + width + (BetweenMm / 2));
        return new PolygonMark([new(from, 0), new(to, 0), new(to, bottom), new(from, bottom)])
        {
            Id = "own-feel",
            Kind = "own-feel",
            Ink = Ink.Shade,
        };
    }

    private const double Top = BeatRows.StartMm + 0.6;

    private static double FootY(int rows) => Top + ((rows - 0.5) * BeatRows.RowMm) + (FootMm / 2);

    private static IEnumerable<Mark> Beats(int rows, Meter meter, double width)
    {
        for (var row = 0; row < rows; row++)
        {
            var beat = (row % meter.BeatsPerBar) + 1;
            var y = Top + (row * BeatRows.RowMm);
            var text = beat.ToString(CultureInfo.InvariantCulture);
            var face = beat == 1 ? Face.SansBold : Face.Sans;
            yield return NeckGrid.Centred(
                text,
                new Point(1.8, y),
                face,
                PrintSizes.PictureFigureMm,
                $"beat-{row}"
            ) with
            {
                Kind = "beat-number",
            };
            if (beat == 1 && row > 0)
            {
                var above = y - (BeatRows.RowMm / 2);
                yield return new LineMark(new Point(0.4, above), new Point(width, above), 0.15)
                {
                    Id = $"bar-{row}",
                    Kind = "bar-rule",
                    Ink = Ink.Rule,
                };
            }
        }
    }

    private static TextMark Foot(Feel feel, Feel own, Point middle, int column)
    {
        var text =
            feel.NotesPerBeat.ToString(CultureInfo.InvariantCulture)
            + (feel.Swing.IsStraight ? "" : " swung");
        var face = feel == own ? Face.SansBold : Face.Sans;
        return NeckGrid.Centred(
            text,
            middle,
            face,
            PrintSizes.PictureFigureMm,
            $"notes-to-beat-{column}"
        ) with
        {
            Kind = "notes-to-beat",
        };
    }
}
