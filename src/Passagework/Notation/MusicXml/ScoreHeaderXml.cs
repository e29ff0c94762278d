using System.Globalization;
using Passagework.Exercises;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>What stands before the music: title, facts that have no element of their own, the one part.</summary>
internal static class ScoreHeaderXml
{
    public const string PartId = "P1";
    public const string FretsField = "passagework-frets";
    public const string NotesField = "passagework-notes";
    public const string PulsesField = "passagework-notes-per-beat";

    // General MIDI 1 programs: 26 acoustic guitar (steel), 34 electric bass (finger).
    private const int GuitarProgram = 26;
    private const int BassProgram = 34;

    public static void Write(XmlPage page, Recipe recipe)
    {
        if (recipe.Title is { } title)
        {
            page.Text("movement-title", title);
        }

        page.Open("identification");
        page.Open("encoding");
        foreach (var element in new[] { "accidental", "beam", "stem" })
        {
            page.Mark("supports", "element", element, "type", element == "stem" ? "no" : "yes");
        }

        page.Close();
        page.Open("miscellaneous");
        Field(page, FretsField, Number(recipe.Instrument.Frets));
        if (recipe.Notes is { } notes)
        {
            Field(page, NotesField, $"{notes.Root} {NameOf(notes)}");
        }

        Field(page, PulsesField, Number(recipe.Rhythm.NotesPerBeat));
        page.Close();
        page.Close();
        WritePart(page, ScoreClef.IsBass(recipe.Instrument.Tuning));
    }

    private static void WritePart(XmlPage page, bool bass)
    {
        var name = bass ? "Bass" : "Guitar";
        page.Open("part-list");
        page.Open("score-part", "id", PartId);
        page.Text("part-name", name);
        page.Open("score-instrument", "id", $"{PartId}-I1");
        page.Text("instrument-name", name);
        page.Close();
        page.Open("midi-instrument", "id", $"{PartId}-I1");
        page.Number("midi-channel", 1);
        page.Number("midi-program", bass ? BassProgram : GuitarProgram);
        page.Close();
        page.Close();
        page.Close();
    }

    private static string NameOf(NoteSet notes) =>
        notes.Scale ?? string.Join(' ', notes.Semitones.Select(Number));

    private static void Field(XmlPage page, string name, string text) =>
        page.Text("miscellaneous-field", text, "name", name);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
