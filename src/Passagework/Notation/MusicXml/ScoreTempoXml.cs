using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The tempo mark and the swing.</summary>
internal static class ScoreTempoXml
{
    public static void Write(XmlPage page, RhythmPlan rhythm)
    {
        var swingType = SwingTypeOf(rhythm);
        if (rhythm.TempoBpm is not { } bpm)
        {
            if (swingType is not null)
            {
                page.Open("sound");
                WriteSwing(page, rhythm, swingType);
                page.Close();
            }

            return;
        }

        var beat = NoteValue.UpTo(rhythm.Meter.Beat, mostDots: 1).First();
        page.Open("direction", "placement", "above");
        page.Open("direction-type");
        page.Open("metronome");
        page.Text("beat-unit", beat.Name);
        if (beat.Dots > 0)
        {
            page.Mark("beat-unit-dot");
        }

        page.Text("per-minute", bpm.ToString("R", CultureInfo.InvariantCulture));
        page.Close();
        page.Close();
        // Always in quarters, whatever the mark counts.
        var quarters = (decimal)(bpm * 4 * rhythm.Meter.Beat.ToDouble());
        page.Open("sound", "tempo", quarters.ToString(CultureInfo.InvariantCulture));
        WriteSwing(page, rhythm, swingType);
        page.Close();
        page.Close();
    }

    /// <summary>The note whose pairs swing; null when nothing swings or MusicXML has no word for the note.</summary>
    private static string? SwingTypeOf(RhythmPlan rhythm)
    {
        if (rhythm.Swing.IsStraight || rhythm.NotesPerBeat is not (2 or 4))
        {
            return null;
        }

        return rhythm.Pulse switch
        {
            { Numerator: 1, Denominator: 8 } => "eighth",
            { Numerator: 1, Denominator: 16 } => "16th",
            _ => null,
        };
    }

    private static void WriteSwing(XmlPage page, RhythmPlan rhythm, string? type)
    {
        if (type is null)
        {
            return;
        }

        var share = rhythm.Swing.Share;
        page.Open("swing");
        page.Number("first", share.Numerator);
        page.Number("second", share.Denominator - share.Numerator);
        page.Text("swing-type", type);
        page.Close();
    }
}
