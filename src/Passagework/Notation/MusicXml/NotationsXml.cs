using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>What stands around one note: ties, tuplet bracket, slurs, technique, articulation.</summary>
internal sealed class NotationsXml(XmlPage page, ScoreNote note, NoteMarks marks, StaffKind staff)
{
    // Whichever element comes first opens the frame.
    private bool _open;
    private bool _technical;

    public void Write((bool Start, bool Stop) tuplet)
    {
        if (tuplet.Start || tuplet.Stop)
        {
            WriteTuplet(tuplet);
        }

        if (note.Note is { } played)
        {
            WriteTies();
            WriteCurves(played);
            WriteTechnical(played);
            WriteArticulations(played);
        }

        if (_open)
        {
            page.Close();
        }
    }

    private void Open()
    {
        if (!_open)
        {
            page.Open("notations");
            _open = true;
        }
    }

    private void WriteTuplet((bool Start, bool Stop) tuplet)
    {
        Open();
        if (tuplet.Start)
        {
            var shown = staff.Stems ? "actual" : "none";
            page.Mark("tuplet", "type", "start", "number", "1", "bracket", "no", "show-number", shown);
        }

        if (tuplet.Stop)
        {
            page.Mark("tuplet", "type", "stop", "number", "1");
        }
    }

    private void WriteTies()
    {
        if (note.TiedBack)
        {
            Open();
            page.Mark("tied", "type", "stop");
        }

        if (note.TiedOn)
        {
            Open();
            page.Mark("tied", "type", "start");
        }
        else if (marks.Sound == NoteSound.LetRing)
        {
            Open();
            page.Mark("tied", "type", "let-ring");
        }
    }

    // One slur over a whole chain of hammers and pulls; a slide is its own line.
    private void WriteCurves(PlayedNote played)
    {
        var slurredInto = IsSlur(marks.Into(played));
        var slurredOut = IsSlur(marks.OutOf(played));
        if (slurredInto && !slurredOut && !note.TiedOn)
        {
            Open();
            page.Mark("slur", "type", "stop", "number", "1");
        }

        if (slurredOut && !slurredInto && !note.TiedBack)
        {
            Open();
            page.Mark("slur", "type", "start", "number", "1");
        }

        if (marks.Into(played) == Slur.Slide && !note.TiedBack)
        {
            Open();
            page.Mark("slide", "type", "stop", "number", "1", "line-type", "solid");
        }

        if (marks.OutOf(played) == Slur.Slide && !note.TiedOn)
        {
            Open();
            page.Mark("slide", "type", "start", "number", "1", "line-type", "solid");
        }
    }

    private void WriteTechnical(PlayedNote played)
    {
        _technical = false;
        if (!note.TiedBack && staff.Fingers)
        {
            if (marks.Stroke(played) is { } stroke)
            {
                Technical(stroke.Element, stroke.Text);
            }

            if (marks.Finger(played) is { } finger)
            {
                Technical("fingering", finger);
            }
        }

        WriteHammers(played);
        if (staff.Places)
        {
            Technical("string", played.Place.String.ToString(CultureInfo.InvariantCulture));
            Technical("fret", played.Place.Fret.ToString(CultureInfo.InvariantCulture));
            WriteBends(played);
        }

        if (_technical)
        {
            page.Close();
        }
    }

    // A release is a bend of its own, downwards.
    private void WriteBends(PlayedNote played)
    {
        foreach (var bend in note.TiedBack ? [] : marks.Bends(played))
        {
            var alter = bend.HalfSteps.ToDouble();
            WriteBend(alter, isRelease: false);
            if (bend.Release)
            {
                WriteBend(-alter, isRelease: true);
            }
        }
    }

    private void WriteBend(double alter, bool isRelease)
    {
        page.Open("bend");
        page.Text("bend-alter", alter.ToString(CultureInfo.InvariantCulture));
        if (isRelease)
        {
            page.Mark("release");
        }

        page.Close();
    }

    private void WriteHammers(PlayedNote played)
    {
        if (HammerElement(marks.Into(played)) is { } into && !note.TiedBack)
        {
            Technical(into, "", "type", "stop", "number", "1");
        }

        if (HammerElement(marks.OutOf(played)) is { } onward && !note.TiedOn)
        {
            Technical(onward, onward == "hammer-on" ? "H" : "P", "type", "start", "number", "1");
        }
    }

    private void Technical(string element, string text, params ReadOnlySpan<string> attributes)
    {
        if (!_technical)
        {
            Open();
            page.Open("technical");
            _technical = true;
        }

        if (text.Length > 0)
        {
            page.Text(element, text, attributes);
        }
        else
        {
            page.Mark(element, attributes);
        }
    }

    private void WriteArticulations(PlayedNote played)
    {
        var accent = played.Note.Accent && !note.TiedBack;
        var staccato = marks.Sound == NoteSound.Staccato && !note.TiedOn && !note.TiedBack;
        if (!staff.Fingers || !(accent || staccato))
        {
            return;
        }

        Open();
        page.Open("articulations");
        if (accent)
        {
            page.Mark("accent");
        }

        if (staccato)
        {
            page.Mark("staccato");
        }

        page.Close();
    }

    private static bool IsSlur(Slur slur) => slur is Slur.Hammer or Slur.Pull;

    private static string? HammerElement(Slur slur) =>
        slur switch
        {
            Slur.Hammer => "hammer-on",
            Slur.Pull => "pull-off",
            _ => null,
        };
}
