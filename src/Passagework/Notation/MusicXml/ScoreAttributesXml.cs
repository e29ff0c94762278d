using System.Globalization;
using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Divisions, key, metre, clefs, strings and capo of the part.</summary>
internal sealed class ScoreAttributesXml(XmlPage page, Recipe recipe, ScoreStaves staves)
{
    private readonly bool _both = staves == ScoreStaves.StaffAndTab;

    public void Write(long divisions)
    {
        page.Open("attributes");
        page.Number("divisions", divisions);
        WriteKey(ScoreKey.Of(recipe.Notes?.Transposed(recipe.Instrument.Capo)));
        page.Open("time");
        page.Number("beats", recipe.Rhythm.Meter.WrittenBeats);
        page.Number("beat-type", recipe.Rhythm.Meter.WrittenUnit);
        page.Close();
        if (_both)
        {
            page.Number("staves", 2);
            page.Text("part-symbol", "bracket");
        }

        WriteClefs();
        WriteStrings();
        page.Close();
    }

    private void WriteKey(ScoreKey key)
    {
        page.Open("key", "print-object", staves == ScoreStaves.TabOnly ? "no" : "");
        page.Number("fifths", key.Fifths);
        if (key.Mode is { } mode)
        {
            page.Text("mode", mode);
        }

        page.Close();
    }

    // Sounding pitches under a clef that says an octave lower: the way without a transposition.
    private void WriteClefs()
    {
        if (staves != ScoreStaves.TabOnly)
        {
            var bass = ScoreClef.IsBass(recipe.Instrument.Tuning);
            page.Open("clef", "number", _both ? "1" : "");
            page.Text("sign", bass ? "F" : "G");
            page.Number("line", bass ? 4 : 2);
            page.Number("clef-octave-change", -1);
            page.Close();
        }

        if (staves != ScoreStaves.StaffOnly)
        {
            page.Open("clef", "number", _both ? "2" : "");
            page.Text("sign", "TAB");
            page.Number("line", 5);
            page.Close();
        }
    }

    // On a lone staff the strings are told all the same; its lines are then five.
    private void WriteStrings()
    {
        var tuning = recipe.Instrument.Tuning;
        var tab = staves != ScoreStaves.StaffOnly;
        page.Open("staff-details", "number", _both ? "2" : "", "show-frets", tab ? "numbers" : "");
        if (_both)
        {
            page.Text("staff-type", "alternate");
        }

        page.Number("staff-lines", tab ? tuning.StringCount : 5);
        for (var line = 1; line <= tuning.StringCount; line++)
        {
            // Line 1 is the bottom one, the highest-numbered string.
            var open = tuning.Open(tuning.StringCount + 1 - line);
            page.Open("staff-tuning", "line", line.ToString(CultureInfo.InvariantCulture));
            page.Text("tuning-step", ScorePitch.Step(open));
            if (open.Name.Alteration != 0)
            {
                page.Number("tuning-alter", open.Name.Alteration);
            }

            page.Number("tuning-octave", open.Octave);
            page.Close();
        }

        if (recipe.Instrument.Capo > 0)
        {
            page.Number("capo", recipe.Instrument.Capo);
        }

        page.Close();
    }
}

/// <summary>Pitches as MusicXML spells them.</summary>
internal static class ScorePitch
{
    private const string Letters = "CDEFGAB";

    public static string Step(SpelledPitch pitch) => Letters[pitch.Name.Letter].ToString();

    /// <summary>The letter of a step, 0 C to 6 B; −1 for none.</summary>
    public static int LetterOf(string step) =>
        step.Length == 1 ? Letters.IndexOf(step[0], StringComparison.Ordinal) : -1;
}
