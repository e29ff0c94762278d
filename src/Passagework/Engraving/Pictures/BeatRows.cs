using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Rhythm;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws one feel of a beat picture: a row for each beat, until a group starts on the beat again.</summary>
internal sealed class BeatRows(GroupRound round, Feel feel, int mostBeats)
{
    /// <summary>From row to row.</summary>
    public const double RowMm = 5.6;

    /// <summary>Radius of the dot that starts a group.</summary>
    public const double StartMm = 1.3;

    /// <summary>From pulse to pulse.</summary>
    public const double PulseMm = 5;
    private const double NoteMm = 0.55;
    private const double LineMm = 0.4;
    private const double RingMm = 0.3;
    private const double OverhangMm = 1.8;

    /// <summary>Beats of the round that are drawn.</summary>
    public int Beats => (int)Math.Min(round.Beats(feel.NotesPerBeat), mostBeats);

    /// <summary>Whether the whole round is drawn.</summary>
    public bool IsWhole => round.Beats(feel.NotesPerBeat) <= mostBeats;

    /// <summary>Width from the first pulse of a beat to the last.</summary>
    public double WidthMm => (feel.NotesPerBeat - 1) * PulseMm;

    /// <summary>The rows, the first pulse of the first beat at the origin.</summary>
    public IEnumerable<Mark> Marks()
    {
        for (var beat = 0; beat < Beats; beat++)
        {
            foreach (var mark in Row(beat))
            {
                yield return mark;
            }
        }

        if (IsWhole)
        {
            yield return Circle(0, Beats, StartMm - (RingMm / 2), "home") with
            {
                Filling = Filling.Paper,
                OutlineMm = RingMm,
            };
            yield break;
        }

        for (var dot = 0; dot < 3; dot++)
        {
            yield return Circle(0, Beats - 0.15 + (dot * 0.32), NoteMm * 0.6, $"more-{dot}");
        }
    }

    private IEnumerable<Mark> Row(int beat)
    {
        var n = feel.NotesPerBeat;
        var first = (long)beat * n;
        for (var pulse = 0; pulse <= n; pulse++)
        {
            if (Thread(beat, pulse, first + pulse) is { } line)
            {
                yield return line;
            }
        }

        for (var pulse = 0; pulse < n; pulse++)
        {
            if (round.StartsAt(first + pulse))
            {
                yield return Circle(At(pulse), beat, StartMm, $"start-{beat}-{pulse}");
            }
            else if (round.SoundsAt(first + pulse))
            {
                yield return Circle(At(pulse), beat, NoteMm, $"note-{beat}-{pulse}");
            }
        }
    }

    // The line of a group runs up to each of its pulses but the first, and over the ends of the row when the group goes on.
    private LineMark? Thread(int beat, int pulse, long at)
    {
        var isFirst = beat == 0 && pulse == 0;
        if (isFirst || round.StartsAt(at))
        {
            return null;
        }

        var n = feel.NotesPerBeat;
        var from = pulse == 0 ? -OverhangMm : At(pulse - 1);
        var to = pulse == n ? WidthMm + OverhangMm : At(pulse);
        var y = beat * RowMm;
        return new LineMark(new Point(from, y), new Point(to, y), LineMm)
        {
            Id = Name($"thread-{beat}-{pulse}"),
            Kind = "group-thread",
            Ink = Ink.Rule,
        };
    }

    // Where a pulse stands in its row; swung, the first of each pair takes its share.
    private double At(int pulse)
    {
        if (feel.Swing.IsStraight || feel.NotesPerBeat is not (2 or 4) || pulse % 2 == 0)
        {
            return pulse * PulseMm;
        }

        return (pulse - 1 + (2 * feel.Swing.Share.ToDouble())) * PulseMm;
    }

    private CircleMark Circle(double x, double row, double radius, string id) =>
        new(new Point(x, row * RowMm), radius) { Id = Name(id), Kind = $"group-{id.Split('-')[0]}" };

    private string Name(string id) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"feel-{feel.NotesPerBeat}{(feel.Swing.IsStraight ? "" : "s")}-{id}"
        );
}
