using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Writes one part with its staves.</summary>
internal sealed class MusicXmlWriter
{
    private const string Doctype = "-//Recordare//DTD MusicXML 4.0 Partwise//EN";
    private const string DoctypeAddress = "http://www.musicxml.org/dtds/partwise.dtd";
    private readonly Recipe _recipe;
    private readonly MusicXmlWriting _options;
    private readonly ImmutableArray<ImmutableArray<ScoreNote>> _bars;
    private readonly XmlPage _page;
    private readonly long _divisions;

    private MusicXmlWriter(
        Recipe recipe,
        MusicXmlWriting options,
        ImmutableArray<ImmutableArray<ScoreNote>> bars,
        XmlPage page
    )
    {
        _recipe = recipe;
        _options = options;
        _bars = bars;
        _page = page;
        _divisions = DivisionsOf(bars, options.Chords);
    }

    public static Outcome<string> Write(Realization realization, MusicXmlWriting options)
    {
        if (!ScoreBars.Of(realization).TryGet(out var bars, out var fault))
        {
            return fault;
        }

        using var page = new XmlPage();
        if (new BarlineXml(page, options, bars.Length).Check() is { } misplaced)
        {
            return misplaced;
        }

        new MusicXmlWriter(realization.Line.Recipe, options, bars, page).Write(realization);
        return page.ToString();
    }

    // The smallest number of divisions of a quarter that makes every length whole, and every chord's beginning.
    private static long DivisionsOf(
        ImmutableArray<ImmutableArray<ScoreNote>> bars,
        ImmutableArray<ScoreChord> chords
    )
    {
        var divisions = 1L;
        foreach (
            var denominator in bars.SelectMany(bar => bar)
                .Select(note => note.Length)
                .Concat(chords.Select(chord => chord.Onset))
                .Select(time => time.Denominator)
                .Distinct()
        )
        {
            divisions = WholeNumbers.Lcm(divisions, denominator);
        }

        return divisions / WholeNumbers.Gcd(divisions, 4);
    }

    private void Write(Realization realization)
    {
        var marks = new NoteMarks(realization, _options);
        var barlines = new BarlineXml(_page, _options, _bars.Length);
        _page.DocType("score-partwise", Doctype, DoctypeAddress);
        _page.Open("score-partwise", "version", "4.0");
        ScoreHeaderXml.Write(_page, _recipe);
        _page.Open("part", "id", ScoreHeaderXml.PartId);
        for (var index = 0; index < _bars.Length; index++)
        {
            _page.Open("measure", "number", (index + 1).ToString(CultureInfo.InvariantCulture));
            barlines.WriteLeft(index + 1);
            if (index == 0)
            {
                new ScoreAttributesXml(_page, _recipe, _options.Staves).Write(_divisions);
                ScoreTempoXml.Write(_page, _recipe.Rhythm);
            }

            WriteBar(_bars[index], marks);
            barlines.WriteRight(index + 1);
            _page.Close();
        }

        _page.Close();
        _page.Close();
    }

    private void WriteBar(ImmutableArray<ScoreNote> bar, NoteMarks marks)
    {
        var both = _options.Staves == ScoreStaves.StaffAndTab;
        var key = ScoreKey.Of(_recipe.Notes?.Transposed(_recipe.Instrument.Capo));
        if (_options.Staves != ScoreStaves.TabOnly)
        {
            var places = _options.Staves == ScoreStaves.StaffOnly;
            var staff = new StaffKind(both ? 1 : null, "1", places, Fingers: true, Stems: true);
            new ScoreBarXml(_page, bar, _divisions, marks).Write(staff, key);
        }

        if (both)
        {
            _page.Open("backup");
            _page.Number("duration", (_recipe.Rhythm.Meter.Bar * Fraction.Of(4 * _divisions)).Floor());
            _page.Close();
        }

        if (_options.Staves != ScoreStaves.StaffOnly)
        {
            var tab = new StaffKind(
                both ? 2 : null,
                both ? "5" : "1",
                Places: true,
                Fingers: !both,
                Stems: !both
            );
            new ScoreBarXml(_page, bar, _divisions, marks).Write(tab, null);
        }
    }
}

/// <summary>What one staff of the part shows.</summary>
/// <param name="Number">Null when it is the only one.</param>
/// <param name="Voice">The voice of its notes.</param>
/// <param name="Places">Whether string and fret stand at the notes.</param>
/// <param name="Fingers">Whether fingers, strokes, accents and groups do.</param>
/// <param name="Stems">Whether notes have stems and beams.</param>
internal sealed record StaffKind(int? Number, string Voice, bool Places, bool Fingers, bool Stems);
