using System.Xml.Linq;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Tests.Notation;

public sealed class MusicXmlWriteTests
{
    private static readonly Fraction Eighth = Fraction.Of(1, 8);

    [Fact]
    public void The_same_line_gives_the_same_bytes()
    {
        var played = Line("6:5 8 5:5 7", Eighth);

        Assert.Equal(MusicXml.Write(played).OrThrow(), MusicXml.Write(played).OrThrow());
        Assert.Equal(MusicXml.WriteCompressed(played).OrThrow(), MusicXml.WriteCompressed(played).OrThrow());
    }

    // The first entry of an .mxl is 'mimetype', stored, without extra field (MusicXML 4.0, compressed files).
    [Fact]
    public void The_archive_begins_with_its_media_type()
    {
        var file = MusicXml.WriteCompressed(Line("6:5 8 5:5 7", Eighth)).OrThrow();

        Assert.Equal("PK\u0003\u0004", System.Text.Encoding.ASCII.GetString(file, 0, 4));
        Assert.Equal(
            "mimetypeapplication/vnd.recordare.musicxml",
            System.Text.Encoding.ASCII.GetString(file, 30, 42)
        );
    }

    // Line 1 of a tab staff is the bottom one: the highest-numbered string (MusicXML 4.0, staff-tuning).
    [Fact]
    public void Strings_are_told_from_the_bottom_line_up()
    {
        var score = Written(Line("6:5", Eighth));

        Assert.Equal(
            ["1 E2", "2 A2", "3 D3", "4 G3", "5 B3", "6 E4"],
            score
                .Descendants("staff-tuning")
                .Select(line =>
                    $"{line.Attribute("line")?.Value} {line.Element("tuning-step")?.Value}{line.Element("tuning-octave")?.Value}"
                )
        );
    }

    [Theory]
    [InlineData("standard", "G 2 -1")]
    [InlineData("bass", "F 4 -1")]
    public void The_clef_says_an_octave_lower(string tuning, string clef)
    {
        var recipe = PlayedLines.Plain with { Instrument = new Fretboard { Tuning = Scores.Tuning(tuning) } };
        var score = Written(PlayedLines.Of(recipe, PlayedLines.Entries("4:5", Eighth)).Spelled());

        var first = score.Descendants("clef").First();
        Assert.Equal(clef, string.Join(' ', first.Elements().Select(element => element.Value)));
    }

    [Theory]
    [InlineData("1/8", "eighth 1 begin, eighth 1 end, eighth 1 begin, eighth 1 end, half 4")]
    [InlineData("1/4", "quarter 1, quarter 1, quarter 1, quarter 1")]
    [InlineData(
        "1/12",
        "eighth:3/2 1 begin, eighth:3/2 1 continue, eighth:3/2 1 end, eighth:3/2 1, quarter:3/2 2, half 6"
    )]
    [InlineData("1/6", "quarter:3/2 2, quarter:3/2 2, quarter:3/2 2, quarter:3/2 2, half:3/2 4")]
    [InlineData(
        "1/20",
        "16th:5/4 1 begin+begin, 16th:5/4 1 continue+continue, 16th:5/4 1 continue+continue, 16th:5/4 1 end+end, 16th:5/4 1"
    )]
    [InlineData(
        "3/16",
        "eighth. 3 begin, 16th 1 end+backward hook, eighth 2 begin, eighth 2 end, 16th 1 begin+forward hook, eighth. 3 end"
    )]
    public void Time_is_written_in_values_tuplets_and_beams(string length, string notes) =>
        Assert.StartsWith(
            notes,
            Values(Written(Line("6:5 8 5:5 7", Scores.Fraction(length)))),
            StringComparison.Ordinal
        );

    // Off the beat a note that crosses into the next beat is tied; one that hides the middle of the bar as well.
    [Theory]
    [InlineData("6:5 1/8, 6:8 1/4", "eighth, eighth~, ~eighth")]
    [InlineData("6:5 1/4, 6:8 1/2", "quarter, quarter~, ~quarter")]
    [InlineData("6:5 1/2, 6:8 1/2", "half, half")]
    [InlineData("6:5 1", "whole")]
    [InlineData("6:5 5/4", "whole~, ~quarter")]
    [InlineData("6:5 5/16, 6:8 1/16", "quarter~, ~16th, 16th")]
    public void Long_notes_show_the_beat(string line, string heads)
    {
        var entries = line.Split(", ")
            .Select(text => text.Split(' '))
            .Select(words => new Entry(
                Place.TryParse(words[0], out var place) ? place : default,
                Scores.Fraction(words[1])
            ));
        var score = Written(PlayedLines.Of(PlayedLines.Plain, entries).Spelled());

        var written = Upper(score)
            .Where(note => note.Element("pitch") is not null)
            .Select(note =>
            {
                var ties = note.Elements("tie").Select(tie => tie.Attribute("type")?.Value).ToList();
                var name = note.Element("type")?.Value;
                return (ties.Contains("stop") ? "~" : "") + name + (ties.Contains("start") ? "~" : "");
            });
        Assert.Equal(heads, string.Join(", ", written));
    }

    [Theory]
    [InlineData("A", "minor pentatonic", 0, "0 minor")]
    [InlineData("Eb", "major", 0, "-3 major")]
    [InlineData("F#", "dorian", 0, "4 dorian")]
    [InlineData("D", "mixolydian", 0, "1 mixolydian")]
    [InlineData("A", "natural minor", 3, "-3 minor")]
    public void The_key_is_that_of_the_scale_as_it_sounds(string root, string scale, int capo, string key)
    {
        var notes =
            NoteName.TryParse(root, out var name) && NoteSet.TryNamed(name, scale, out var set) ? set : null;
        var recipe = PlayedLines.Plain with
        {
            Notes = notes,
            Instrument = new Fretboard { Capo = capo },
        };
        var score = Written(PlayedLines.Of(recipe, PlayedLines.Entries("6:5", Eighth)).Spelled());

        var told = score.Descendants("key").First();
        Assert.Equal(key, $"{told.Element("fifths")?.Value} {told.Element("mode")?.Value}");
    }

    // A sign holds to the bar line; the key's own notes need none. G major has an F sharp.
    [Fact]
    public void Accidentals_stand_where_key_and_bar_do_not_tell()
    {
        var notes =
            NoteName.TryParse("G", out var g) && NoteSet.TryNamed(g, "major", out var set) ? set : null;
        var entries = PlayedLines.Entries("1:2 1:2 1:1 1:1 1:2 1:2 1:1 1:2", Eighth);
        var score = Written(
            PlayedLines.Of(PlayedLines.Plain with { Notes = notes }, [.. entries, .. entries]).Spelled()
        );

        string[] bar = ["-", "-", "natural", "-", "sharp", "-", "natural", "sharp"];
        Assert.Equal(
            [.. bar, .. bar],
            Upper(score)
                .Where(note => note.Element("pitch") is not null)
                .Select(note => note.Element("accidental")?.Value ?? "-")
        );
    }

    [Fact]
    public void Tempo_counts_the_beat_and_sound_counts_quarters()
    {
        var rhythm = new RhythmPlan
        {
            Meter = Scores.Meter("6/8"),
            TempoBpm = 60,
            NotesPerBeat = 3,
        };
        var score = Written(
            PlayedLines
                .Of(PlayedLines.Plain with { Rhythm = rhythm }, PlayedLines.Entries("6:5", Eighth))
                .Spelled()
        );

        Assert.Equal(
            "quarter,,60",
            string.Join(',', score.Descendants("metronome").Elements().Select(mark => mark.Value))
        );
        Assert.Equal("90", score.Descendants("sound").Single().Attribute("tempo")?.Value);
    }

    [Fact]
    public void Swing_is_two_whole_numbers()
    {
        var rhythm = new RhythmPlan
        {
            NotesPerBeat = 2,
            Swing = Swing.TryOf(Fraction.Of(3, 5), out var swing) ? swing : default,
        };
        var score = Written(
            PlayedLines
                .Of(PlayedLines.Plain with { Rhythm = rhythm }, PlayedLines.Entries("6:5", Eighth))
                .Spelled()
        );

        Assert.Equal(
            "3 2 eighth",
            string.Join(' ', score.Descendants("swing").Elements().Select(part => part.Value))
        );
    }

    // A chain of hammer and pull lies under one curve; the slide behind it has its own line.
    [Fact]
    public void Slurs_are_pairs_inside_one_curve()
    {
        var entries = PlayedLines
            .Entries("6:5 8 5 7", Eighth)
            .Zip([Slur.None, Slur.Hammer, Slur.Pull, Slur.Slide])
            .Select(pair =>
                pair.First with
                {
                    Slur = pair.Second,
                    Stroke = pair.Second == Slur.None ? Stroke.Down : Stroke.None,
                }
            );
        var score = Written(PlayedLines.Of(PlayedLines.Plain, entries).Spelled());

        Assert.Equal(
            [
                "slur start, hammer-on start",
                "hammer-on stop, pull-off start",
                "slur stop, slide start, pull-off stop",
                "slide stop",
            ],
            Upper(score)
                .Where(note => note.Element("pitch") is not null)
                .Select(note =>
                    string.Join(
                        ", ",
                        note.Descendants()
                            .Where(sign =>
                                sign.Name.LocalName is "slur" or "slide" or "hammer-on" or "pull-off"
                            )
                            .Select(sign => $"{sign.Name.LocalName} {sign.Attribute("type")?.Value}")
                    )
                )
        );
    }

    [Fact]
    public void A_late_start_is_a_rest()
    {
        var recipe = PlayedLines.Plain with { Rhythm = new RhythmPlan { StartOffset = Fraction.Of(3, 4) } };
        var score = Written(PlayedLines.Of(recipe, PlayedLines.Entries("6:5 8", Eighth)).Spelled());

        Assert.Equal(["rest half.", "A eighth", "C eighth"], Heads(score));
    }

    [Fact]
    public void What_no_value_can_hold_names_the_note()
    {
        var played = Line("6:5 8", Fraction.Of(1, 1021));

        Assert.Equal(
            "bar 1, beat 1: note 0 cannot be written in note values; lengths that are parts of a beat, down to the 1024th note",
            MusicXml.Write(played) is Outcome<string>.Refused refused ? refused.Fault.ToString() : "written"
        );
    }

    private static IEnumerable<string> Heads(XElement score) =>
        Upper(score)
            .Select(note =>
                $"{note.Element("pitch")?.Element("step")?.Value ?? "rest"} {note.Element("type")?.Value}"
                + (note.Element("dot") is null ? "" : ".")
            );

    private static Realization Line(string places, Fraction length) =>
        PlayedLines.Of(PlayedLines.Plain, PlayedLines.Entries(places, length)).Spelled();

    private static XElement Written(Realization played) =>
        XDocument.Parse(MusicXml.Write(played).OrThrow()).Root
        ?? throw new InvalidOperationException("no root");

    private static IEnumerable<XElement> Upper(XElement score) =>
        score.Descendants("note").Where(note => note.Element("staff")?.Value == "1");

    private static string Values(XElement score) =>
        string.Join(
            ", ",
            Upper(score)
                .Select(note =>
                {
                    var ratio = note.Element("time-modification");
                    var tuplet = ratio is null
                        ? ""
                        : $":{ratio.Element("actual-notes")?.Value}/{ratio.Element("normal-notes")?.Value}";
                    var beams = string.Join('+', note.Elements("beam").Select(beam => beam.Value));
                    var dots = new string('.', note.Elements("dot").Count());
                    return $"{note.Element("type")?.Value}{dots}{tuplet} {note.Element("duration")?.Value} {beams}".TrimEnd();
                })
        );
}
