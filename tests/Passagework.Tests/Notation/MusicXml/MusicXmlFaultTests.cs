using System.IO.Compression;
using System.Text;
using CsCheck;
using Passagework.Foundation;
using Passagework.Notation;
using static Passagework.Tests.Notation.Scores;

namespace Passagework.Tests.Notation;

public sealed class MusicXmlFaultTests
{
    [Theory]
    [InlineData("", "is no well-formed XML: Root element is missing; a MusicXML file")]
    [InlineData(
        "{}",
        "line 1, column 1: is no well-formed XML: Data at the root level is invalid; a MusicXML file"
    )]
    [InlineData(
        "<svg/>",
        "line 1, column 2: is no MusicXML score but 'svg'; a file whose outermost element is score-partwise or score-timewise"
    )]
    [InlineData("<score-partwise/>", "no notes in the file; a part with pitched notes")]
    public void Another_file_is_named(string text, string fault) => Assert.Equal(fault, Fault(text));

    [Fact]
    public void A_file_that_breaks_off_names_where()
    {
        var score = Of(FourFour + Note("A2", 4));

        Assert.StartsWith(
            "line 3, column 308: is no well-formed XML: ",
            Fault(score[..^60]),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(
        "<divisions>0</divisions>",
        "bar 1, beat 1: '0' divisions of a quarter; above 0, at most 1000000"
    )]
    [InlineData(
        "<divisions>-4</divisions>",
        "bar 1, beat 1: '-4' divisions of a quarter; above 0, at most 1000000"
    )]
    [InlineData(
        "<time><beats>5</beats><beat-type>32</beat-type></time>",
        "bar 1, beat 1: the metre '5/32'; 1 to 16 beats of a half, quarter, eighth or sixteenth note"
    )]
    public void Attributes_out_of_range_name_the_bar(string attribute, string fault) =>
        Assert.Equal(fault, Fault(Of($"<attributes>{attribute}</attributes>" + Note("A2", 4))));

    [Theory]
    [InlineData(
        "C1",
        4,
        "bar 2, beat 3: C1 lies below the lowest string; pitches from 22 frets on strings E2 to E4, or another part or instrument"
    )]
    [InlineData(
        "E6",
        4,
        "bar 2, beat 3: E6 lies beyond the frets; pitches from 22 frets on strings E2 to E4, or another part or instrument"
    )]
    [InlineData("A2", -4, "bar 2, beat 3: '-4' is no duration; a number above 0")]
    [InlineData(
        "A2",
        9999,
        "bar 2, beat 3: a duration of 9999/16 whole notes; at most 64 whole notes, in parts no finer than 1/1000000"
    )]
    public void Notes_out_of_range_name_bar_and_beat(string pitch, int duration, string fault) =>
        Assert.Equal(fault, Fault(Of(FourFour + Note("A2", 16), Note("A2", 8) + Note(pitch, duration))));

    [Fact]
    public void A_pitch_that_is_none_names_line_and_column() =>
        Assert.Matches(
            "^bar 1, beat 1 \\(line 3, column [0-9]+\\): a pitch that is none; step A to G, alter -3 to 3, octave 0 to 9$",
            Fault(Of(FourFour + Note("H2", 4)))
        );

    [Fact]
    public void Percussion_alone_is_refused() =>
        Assert.Equal(
            "only percussion without pitch; a part with pitched notes",
            Fault(Of(FourFour + "<note><unpitched/><duration>16</duration></note>"))
        );

    // The usual document type is passed over; an entity of the file's own is never known, wherever it leads.
    [Theory]
    [InlineData("<!ENTITY x SYSTEM \"file:///etc/passwd\">")]
    [InlineData("<!ENTITY a \"aaaaaaaaaa\"><!ENTITY x \"&a;&a;&a;&a;&a;&a;&a;&a;\">")]
    public void Entities_are_never_read(string entity)
    {
        var score = Of(FourFour + Note("A2", 4))
            .Replace(
                "\"http://www.musicxml.org/dtds/partwise.dtd\">",
                $"\"http://www.musicxml.org/dtds/partwise.dtd\" [{entity}]>",
                StringComparison.Ordinal
            );

        Assert.Equal("A2 1/4", Entries(Read(score)));
        Assert.Contains(
            "Reference to undeclared entity 'x'",
            Fault(score.Replace("<part-name>Guitar", "<part-name>&x;", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Nesting_is_skipped_until_it_is_too_deep()
    {
        Assert.Equal("A2 1/4", Entries(Read(Of(FourFour + Note("A2", 4, Nested(50))))));
        Assert.Contains(
            "Elements are nested too deep",
            Fault(Of(FourFour + Note("A2", 4, Nested(100_000)))),
            StringComparison.Ordinal
        );
    }

    // Attributes of one element cost their number squared.
    [Fact]
    public void A_tag_without_end_is_refused_after_its_beginning()
    {
        var many = string.Concat(Enumerable.Range(0, 1_000_000).Select(i => $" a{i}=\"1\""));

        Assert.Equal(
            "is no well-formed XML: A tag is longer than 64 KB; a MusicXML file",
            Fault($"<score-partwise{many}/>")
        );
    }

    [Fact]
    public void Notes_are_counted_over_all_parts()
    {
        var notes = string.Concat(Enumerable.Repeat(Note("A2", 1), 50));
        var bars = string.Concat(
            Enumerable.Range(0, 1001).Select(i => $"<measure>{(i == 0 ? FourFour : "")}{notes}</measure>")
        );

        Assert.Equal(
            "bar ?, beat 1: more than 100,000 notes; a shorter piece, or fewer parts",
            Fault(
                $"<score-partwise><part id=\"P1\">{bars}</part><part id=\"P2\">{bars}</part></score-partwise>"
            )
        );
    }

    private static string Nested(int levels) =>
        string.Concat(Enumerable.Repeat("<a>", levels)) + string.Concat(Enumerable.Repeat("</a>", levels));

    [Fact]
    public void Another_encoding_is_read_or_named()
    {
        var score = Of(FourFour + Note("A2", 4)).Replace("UTF-8", "UTF-16", StringComparison.Ordinal);
        var wide = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(score)).ToArray();

        Assert.Equal("A2 1/4", Entries(MusicXml.Read(wide).OrThrow()));
        Assert.Contains(
            "is no well-formed XML",
            Fault(Of(FourFour).Replace("UTF-8", "klingon", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        byte[] broken = [.. Encoding.UTF8.GetBytes("<score-partwise><work><work-title>"), 0xFF, 0xFE, 0xC0];
        Assert.Contains("is no well-formed XML", FaultOf(broken), StringComparison.Ordinal);
    }

    // Files saved anew keep a first line that names what they were before.
    [Fact]
    public void A_mark_of_utf_8_beats_the_encoding_named()
    {
        var score = Of(FourFour + Note("A2", 4)).Replace("UTF-8", "UTF-16", StringComparison.Ordinal);
        byte[] mark = [0xEF, 0xBB, 0xBF];

        Assert.Equal(
            "A2 1/4",
            Entries(MusicXml.Read((byte[])[.. mark, .. Encoding.UTF8.GetBytes(score)]).OrThrow())
        );
        Assert.Equal(
            "is no text in UTF-8, as its first bytes promise; a MusicXML file",
            FaultOf([.. mark, .. Encoding.UTF8.GetBytes("<score-partwise>"), 0xFF])
        );
    }

    [Fact]
    public void Four_thousand_notes_at_once_are_one_chord()
    {
        var chord = string.Concat(Enumerable.Repeat(Note("B2", 4, before: "<chord/>"), 4000));

        var read = Read(Of(FourFour + Note("A2", 4) + chord));

        Assert.Equal("B2 1/4", Entries(read));
        Assert.Equal(
            "bar 1, beat 1: note of a chord left out: no hand holds it with those above (4000 times)",
            Assert.Single(read.LeftOut).ToString()
        );
    }

    [Fact]
    public void Ten_thousand_bars_are_read()
    {
        var bars = Enumerable
            .Range(0, 10_000)
            .Select(i => (i == 0 ? FourFour : "") + Note("A2", 8) + Note("C3", 8));

        Assert.Equal(20_000, Read(Of([.. bars])).Recipe.Written!.Entries.Length); // an import is always written
    }

    [Fact]
    public void More_notes_than_a_line_holds_are_refused()
    {
        var bars = Enumerable
            .Range(0, 10_001)
            .Select(i => (i == 0 ? FourFour : "") + Note("A2", 8) + Note("C3", 8));

        Assert.Equal("a voice of 20002 notes; at most 20,000", Fault(Of([.. bars])));
    }

    [Fact]
    public void Endless_repeats_are_refused()
    {
        const string Back =
            "<barline location=\"right\"><repeat direction=\"backward\" times=\"99\"/></barline>";
        var bars = Enumerable.Range(0, 2000).Select(i => (i == 0 ? FourFour : "") + Note("A2", 16) + Back);

        Assert.Equal(
            "more than 100,000 bars when repeats are played; repeats as written",
            Fault(Of([.. bars]), new MusicXmlReading { UnrollRepeats = true })
        );
    }

    [Fact]
    public void Lengths_without_a_common_unit_are_refused()
    {
        string[] divisions = ["997", "991", "983"];
        var notes = divisions.Select(number =>
            $"<attributes><divisions>{number}</divisions></attributes>" + Note("A2", 1)
        );

        Assert.Contains(
            "divides time too finely beside the other lengths",
            Fault(Of(string.Concat(notes))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_archive_is_read_by_its_list()
    {
        var score = Of(FourFour + Note("A2", 4));

        Assert.Equal("A2 1/4", Entries(MusicXml.Read(Zip(("a/b.xml", score)), null).OrThrow()));
        Assert.Equal(
            "A2 1/4",
            Entries(MusicXml.Read(Zip(("x.xml", "<svg/>"), ("a/b.xml", score), List("a/b.xml"))).OrThrow())
        );
    }

    [Theory]
    [InlineData("../b.xml", "META-INF/container.xml: names '../b.xml'; an entry of the archive")]
    [InlineData("/etc/passwd", "META-INF/container.xml: names '/etc/passwd'; an entry of the archive")]
    [InlineData("c:\\b.xml", "META-INF/container.xml: names 'c:\\b.xml'; an entry of the archive")]
    [InlineData("c.xml", "META-INF/container.xml: there is no entry 'c.xml'; the name of an entry")]
    public void A_list_that_leads_elsewhere_is_refused(string path, string fault) =>
        Assert.Equal(fault, FaultOf(Zip(("../b.xml", "<x/>"), ("b.xml", Of(FourFour)), List(path))));

    [Fact]
    public void A_bomb_is_refused_before_it_unpacks()
    {
        Assert.Equal(
            "'a.xml' unpacks to over 500 times its size; a score",
            FaultOf(Zip(("a.xml", new string(' ', 10_000_000))))
        );
        Assert.Equal(
            "'a.xml' unpacks to more than 16384 KB; a shorter piece",
            FaultOf(Zip(("a.xml", new string(' ', 100_000_000))))
        );
    }

    [Fact]
    public void A_broken_archive_is_refused()
    {
        var whole = Zip(("a.xml", Of(FourFour + Note("A2", 4))));

        Assert.Equal(
            "is no readable zip: its list of entries is missing or longer than 1000; an .mxl file",
            FaultOf(whole[..^30])
        );
        Assert.Equal("holds no score; an .mxl file", FaultOf(Zip(("a.txt", "x"))));
        var many = Enumerable.Range(0, 1001).Select(i => ($"{i}.txt", "x")).ToArray();
        Assert.Equal(
            "is no readable zip: its list of entries is missing or longer than 1000; an .mxl file",
            FaultOf(Zip(many))
        );
    }

    // Whatever becomes of the bytes of an archive, they are read or refused.
    [Fact]
    public void A_damaged_archive_never_throws()
    {
        var whole = Zip(("a.xml", Of(FourFour + Note("A2", 4))), List("a.xml"));

        Check.Sample(
            Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte).List[1, 6],
            damage =>
            {
                var bytes = whole.ToArray();
                foreach (var (at, value) in damage)
                {
                    bytes[at] = value;
                }

                Assert.DoesNotContain('\n', FaultOf(bytes));
            },
            iter: 3000
        );
    }

    private static string FaultOf(byte[] file) =>
        MusicXml.Read(file) is Outcome<MusicXmlImport>.Refused refused ? refused.Fault.ToString() : "read";

    private static (string, string) List(string path) =>
        (
            "META-INF/container.xml",
            $"<container><rootfiles><rootfile full-path=\"{path}\"/></rootfiles></container>"
        );

    private static byte[] Zip(params (string Name, string Text)[] entries)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create))
        {
            foreach (var (name, text) in entries)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return stream.ToArray();
    }
}
