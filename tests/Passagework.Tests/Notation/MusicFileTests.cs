using System.Text;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class MusicFileTests
{
    private static readonly Realization Played = Measurer
        .Measure(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2))
        .OrThrow()
        .Realization;

    [Fact]
    public void A_file_is_told_by_what_it_begins_with()
    {
        Assert.Equal(MusicFileKind.Midi, MusicFile.KindOf(Midi.Write(Played)));
        Assert.Equal(
            MusicFileKind.PackedMusicXml,
            MusicFile.KindOf(MusicXml.WriteCompressed(Played).OrThrow())
        );
        Assert.Equal(MusicFileKind.MusicXml, Kind("\uFEFF <?xml version=\"1.0\"?>"));
        Assert.Equal(MusicFileKind.MusicXml, MusicFile.KindOf(Encoding.Unicode.GetBytes("\uFEFF<score/>")));
        Assert.Equal(MusicFileKind.Exercise, Kind("\n{ \"passagework\": 1 }"));
        Assert.Equal(MusicFileKind.TextTab, Kind("e|---0---|"));
        Assert.Equal(MusicFileKind.TextTab, Kind(""));
    }

    [Fact]
    public void Every_kind_gives_the_same_notes()
    {
        var keys = Played.Line.Notes.Select(note => note.Midi);

        Assert.Equal(keys, Keys(Midi.Write(Played)));
        Assert.Equal(keys, Keys(MusicXml.WriteCompressed(Played).OrThrow()));
        Assert.Equal(keys, Keys(Encoding.UTF8.GetBytes(MusicXml.Write(Played).OrThrow())));
        Assert.Equal(keys, Keys(Encoding.UTF8.GetBytes("\uFEFF" + TextTab.Write(Played))));
        Assert.Equal(keys, Keys(Encoding.UTF8.GetBytes(RecipeJson.Write(Played.Line.Recipe))));
    }

    [Fact]
    public void Of_several_voices_each_can_be_asked_for()
    {
        var file = Encoding.UTF8.GetBytes(TwoParts);
        var first = MusicFile.Read(file).OrThrow();
        var second = MusicFile.Read(file, first.Lines[1].Reading).OrThrow();

        Assert.Equal(["Flute (1 note)", "part P2 (2 notes)"], first.Lines.Select(line => line.ToString()));
        Assert.Equal([true, false], first.Lines.Select(line => line.IsRead));
        Assert.Equal([false, true], second.Lines.Select(line => line.IsRead));
        Assert.Contains("1 other voice left out (2 notes); read was voice 1 of part P1", first.Remarks);
        Assert.Equal(60, LineBuilder.Build(second.Recipe).OrThrow().Notes[0].Midi);
    }

    [Fact]
    public void One_line_alone_is_no_choice() =>
        Assert.Empty(MusicFile.Read(MusicXml.WriteCompressed(Played).OrThrow()).OrThrow().Lines);

    [Fact]
    public void A_file_above_the_limit_of_its_kind_is_refused()
    {
        var text = new byte[MusicFile.MostBytes(MusicFileKind.TextTab) + 1];
        Array.Fill(text, (byte)'-');

        Assert.False(MusicFile.Read(text).TryGet(out _, out var fault));
        Assert.Equal("the file is too large for text tab: 1.1 MB; at most 1 MB", fault.ToString());
    }

    private const string TwoParts = """
        <score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Flute</part-name></score-part>
        <score-part id="P2"><part-name></part-name></score-part></part-list>
        <part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>
        <note><pitch><step>E</step><octave>4</octave></pitch><duration>4</duration><voice>1</voice></note></measure></part>
        <part id="P2"><measure number="1"><attributes><divisions>1</divisions></attributes>
        <note><pitch><step>C</step><octave>4</octave></pitch><duration>2</duration><voice>1</voice></note>
        <note><pitch><step>D</step><octave>4</octave></pitch><duration>2</duration><voice>1</voice></note></measure></part>
        </score-partwise>
        """;

    private static MusicFileKind Kind(string text) => MusicFile.KindOf(Encoding.UTF8.GetBytes(text));

    private static IEnumerable<int> Keys(byte[] file) =>
        LineBuilder.Build(MusicFile.Read(file).OrThrow().Recipe).OrThrow().Notes.Select(note => note.Midi);
}
