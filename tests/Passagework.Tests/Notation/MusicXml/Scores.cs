using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Notation;

/// <summary>Makes and reads small scores for tests.</summary>
internal static class Scores
{
    /// <summary>A score of one part with these measures; <c>divisions</c> 4, 4/4 unless they say otherwise.</summary>
    public static string Of(params string[] measures) => Parts(("Guitar", measures));

    public static string Parts(params (string Name, string[] Measures)[] parts)
    {
        var list = parts.Select(
            (part, i) => $"""<score-part id="P{i + 1}"><part-name>{part.Name}</part-name></score-part>"""
        );
        var bodies = parts.Select((part, i) => $"""<part id="P{i + 1}">{Measures(part.Measures)}</part>""");
        return $"""
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
            <score-partwise version="4.0"><part-list>{string.Concat(list)}</part-list>{string.Concat(
                bodies
            )}</score-partwise>
            """;
    }

    public const string FourFour =
        "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

    /// <summary>A note such as <c>A2</c> of some divisions; what stands behind the duration is given as it is.</summary>
    public static string Note(string pitch, int duration, string rest = "", string before = "")
    {
        var sharp = pitch.Contains('#', StringComparison.Ordinal) ? "<alter>1</alter>" : "";
        return $"<note>{before}<pitch><step>{pitch[0]}</step>{sharp}<octave>{pitch[^1]}</octave></pitch><duration>{duration}</duration>{rest}</note>";
    }

    public static string Rest(int duration) => $"<note><rest/><duration>{duration}</duration></note>";

    public static MusicXmlImport Read(string score, MusicXmlReading? options = null) =>
        Try(score, options).OrThrow();

    public static string Fault(string score, MusicXmlReading? options = null) =>
        Try(score, options) is Outcome<MusicXmlImport>.Refused refused ? refused.Fault.ToString() : "read";

    public static Outcome<MusicXmlImport> Try(string score, MusicXmlReading? options = null) =>
        MusicXml.Read(Encoding.UTF8.GetBytes(score), options);

    /// <summary>Entries such as <c>6:5 1/16</c>, <c>C4 1/8</c>, <c>r 1/4</c>.</summary>
    public static string Entries(MusicXmlImport import) =>
        string.Join(
            ", ",
            import.Recipe.Written!.Entries.Select(entry => // an import is always written
                $"{Tones(entry)} {entry.Duration}"
            )
        );

    private static string Tones(WrittenEntry entry) =>
        entry.IsRest
            ? "r"
            : string.Join(
                '+',
                entry
                    .With.Prepend(new WrittenTone(entry.Place, entry.Pitch))
                    .Select(tone => tone.Place?.ToString() ?? tone.Pitch?.ToString())
            );

    public static Meter Meter(string text) =>
        Passagework.Rhythm.Meter.TryParse(text, out var meter) ? meter : default;

    public static Tuning Tuning(string text) =>
        Passagework.Instrument.Tuning.TryParse(text, out var tuning)
            ? tuning
            : throw new ArgumentException(text, nameof(text));

    public static Fraction Fraction(string text) =>
        Passagework.Foundation.Fraction.TryParse(text, out var value)
            ? value
            : throw new ArgumentException(text, nameof(text));

    private static string Measures(string[] measures) =>
        string.Concat(measures.Select((measure, i) => $"""<measure number="{i + 1}">{measure}</measure>"""));

    /// <summary>The same with pitches spelled as they sound.</summary>
    public static Realization Spelled(this Realization played)
    {
        var keys = played.Notes.Select(note => note.Note.Midi).ToList();
        var recipe = played.Line.Recipe;
        var sounding = recipe.Notes?.Transposed(recipe.Instrument.Capo);
        var names = Passagework.Theory.Speller.Spell(sounding, keys);
        var notes = played
            .Notes.Select((note, i) => note with { Note = note.Note with { Pitch = names[i] } })
            .ToList();
        var line = played.Line with { Notes = [.. notes.Select(note => note.Note)] };
        return new Realization(line, [.. notes]);
    }
}
