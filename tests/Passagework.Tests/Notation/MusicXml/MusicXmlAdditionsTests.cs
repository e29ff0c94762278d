using System.Xml.Linq;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Tests.Notation;

/// <summary>What is asked for over the notes: chord symbols, repeats, endings.</summary>
public sealed class MusicXmlAdditionsTests
{
    // Kinds and degrees by the MusicXML 4.0 documentation of <kind> and <degree>: suspended fourth with a minor seventh
    // added, dominant with an altered ninth.
    [Theory]
    [InlineData("Am7", "<root><root-step>A</root-step></root><kind text=\"m7\">minor-seventh</kind>")]
    [InlineData(
        "Bbmaj7/D",
        "<root><root-step>B</root-step><root-alter>-1</root-alter></root><kind text=\"maj7\">major-seventh</kind><bass><bass-step>D</bass-step></bass>"
    )]
    [InlineData(
        "E7#9",
        "<root><root-step>E</root-step></root><kind text=\"7#9\">dominant</kind><degree><degree-value>9</degree-value><degree-alter>1</degree-alter><degree-type>add</degree-type></degree>"
    )]
    [InlineData(
        "F#7sus4",
        "<root><root-step>F</root-step><root-alter>1</root-alter></root><kind text=\"7sus4\">suspended-fourth</kind><degree><degree-value>7</degree-value><degree-alter>0</degree-alter><degree-type>add</degree-type></degree>"
    )]
    public void Chord_symbol_is_a_harmony(string symbol, string expected) =>
        Assert.Equal(
            expected,
            Harmony(symbol, Fraction.Zero)
                .Replace("<harmony>", "", StringComparison.Ordinal)
                .Replace("</harmony>", "", StringComparison.Ordinal)
        );

    // An eighth after the beginning of the note; a quarter has as many divisions as that needs, two.
    [Fact]
    public void Chord_inside_a_note_has_an_offset() =>
        Assert.EndsWith(
            "<offset>1</offset></harmony>",
            Harmony("C", Fraction.Of(5, 8)),
            StringComparison.Ordinal
        );

    [Fact]
    public void All_kinds_of_chord_are_written_and_pass_as_harmony() =>
        Assert.All(
            ChordKind.All,
            kind =>
                Assert.Contains("<kind", Harmony("C" + kind.Symbol, Fraction.Zero), StringComparison.Ordinal)
        );

    // By the documentation of <bend-alter> (MusicXML 4.0): semitones, halves for quarter tones, negative in a release.
    [Fact]
    public void Bend_stands_at_string_and_fret()
    {
        var options = new MusicXmlWriting { Bends = [new ScoreBend(1, Fraction.Of(3, 2), Release: true)] };
        var score = XDocument.Parse(MusicXml.Write(Bars("6:5 6:8"), options).OrThrow());

        Assert.Equal(
            [
                "<bend><bend-alter>1.5</bend-alter></bend>",
                "<bend><bend-alter>-1.5</bend-alter><release /></bend>",
            ],
            score.Descendants("bend").Select(bend => bend.ToString(SaveOptions.DisableFormatting))
        );
        Assert.Equal("8", (string?)score.Descendants("bend").First().Parent!.Element("fret"));
    }

    // Played: bars 1 2, again 1, then the second ending 3.
    [Fact]
    public void Repeats_and_endings_are_played_when_read_back()
    {
        var written = new MusicXmlWriting
        {
            Repeats = [new ScoreRepeat(1, 2)],
            Endings = [new ScoreEnding(2, 2, "1."), new ScoreEnding(3, 3, "2.")],
        };
        var score = MusicXml.Write(Bars("6:5 6:8 5:5"), written).OrThrow();

        Assert.Equal("6:5 1, 6:8 1, 5:5 1", Scores.Entries(Scores.Read(score)));
        Assert.Equal(
            "6:5 1, 6:8 1, 6:5 1, 5:5 1",
            Scores.Entries(Scores.Read(score, new MusicXmlReading { UnrollRepeats = true }))
        );
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(1, 4)]
    public void Bars_that_are_not_there_are_refused(int first, int last)
    {
        var options = new MusicXmlWriting { Repeats = [new ScoreRepeat(first, last)] };

        Assert.False(MusicXml.Write(Bars("6:5 6:8 5:5"), options).TryGet(out _, out var fault));
        Assert.Equal(
            $"a repeat from bar {first} to bar {last}; bars from 1 to 3, in order",
            fault.ToString()
        );
    }

    private static string Harmony(string symbol, Fraction onset)
    {
        var chord = Chord.TryParse(symbol, out var read)
            ? read
            : throw new ArgumentException(symbol, nameof(symbol));
        var options = new MusicXmlWriting { Chords = [new ScoreChord(onset, chord)] };
        var score = XDocument.Parse(MusicXml.Write(Bars("6:5 1/2 5:5"), options).OrThrow());
        return score.Descendants("harmony").Single().ToString(SaveOptions.DisableFormatting);
    }

    // A whole note to a bar; a length before a place makes the one before it that long.
    private static Realization Bars(string words)
    {
        var entries = new List<WrittenEntry>();
        foreach (var word in words.Split(' '))
        {
            if (Fraction.TryParse(word, out var length) && word.Contains('/'))
            {
                entries[^1] = entries[^1] with { Duration = length };
                continue;
            }

            entries.Add(
                new WrittenEntry
                {
                    Place = Passagework.Instrument.Place.TryParse(word, out var place) ? place : null,
                    Duration = Fraction.One,
                }
            );
        }

        var recipe = new Recipe { Written = new WrittenLine([.. entries]) };
        return Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();
    }
}
