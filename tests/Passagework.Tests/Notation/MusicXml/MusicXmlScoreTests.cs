using Passagework.Notation;
using static Passagework.Tests.Notation.Scores;

namespace Passagework.Tests.Notation;

public sealed class MusicXmlScoreTests
{
    [Fact]
    public void Repeats_and_endings_are_played_on_request()
    {
        var score = Of(
            FourFour
                + "<barline location=\"left\"><repeat direction=\"forward\"/></barline>"
                + Note("A2", 16),
            "<barline location=\"left\"><ending number=\"1, 2\" type=\"start\"/></barline>"
                + Note("B2", 16)
                + "<barline location=\"right\"><ending number=\"1, 2\" type=\"stop\"/><repeat direction=\"backward\"/></barline>",
            "<barline location=\"left\"><ending number=\"3\" type=\"start\"/></barline>"
                + Note("C3", 16)
                + "<barline location=\"right\"><ending number=\"3\" type=\"discontinue\"/></barline>",
            Note("D3", 16)
        );

        Assert.Equal("A2 1, B2 1, C3 1, D3 1", Entries(Read(score)));
        Assert.Equal(["bar 2, beat 1: repeat or ending not played (2 times)"], Remarks(Read(score)));
        var played = Read(score, new MusicXmlReading { UnrollRepeats = true });
        Assert.Equal("A2 1, B2 1, A2 1, B2 1, A2 1, C3 1, D3 1", Entries(played));
        Assert.Empty(played.LeftOut);
    }

    [Fact]
    public void A_repeat_goes_back_to_behind_the_one_before()
    {
        const string Back = "<barline location=\"right\"><repeat direction=\"backward\"/></barline>";
        const string ThreeTimes =
            "<barline location=\"right\"><repeat direction=\"backward\" times=\"3\"/></barline>";

        Assert.Equal(
            "A2 1, A2 1, B2 1, B2 1, B2 1, C3 1",
            Entries(
                Read(
                    Of(FourFour + Note("A2", 16) + Back, Note("B2", 16) + ThreeTimes, Note("C3", 16)),
                    new MusicXmlReading { UnrollRepeats = true }
                )
            )
        );
    }

    [Fact]
    public void Part_and_voice_are_chosen_by_name_or_number()
    {
        var score = Parts(
            ("Drums", [FourFour + "<note><unpitched/><duration>16</duration></note>"]),
            (
                "Voice",
                [
                    FourFour
                        + Voiced("C4", 16, "1")
                        + "<backup><duration>16</duration></backup>"
                        + Voiced("C3", 8, "2")
                        + Voiced("D3", 8, "2"),
                ]
            ),
            ("Bass", [FourFour + Note("E2", 16)])
        );

        Assert.Equal("C3 1/2, D3 1/2", Entries(Read(score)));
        Assert.Equal("C4 1", Entries(Read(score, new MusicXmlReading { Voice = "1" })));
        Assert.Equal("E2 1", Entries(Read(score, new MusicXmlReading { Part = "bass" })));
        Assert.Equal("E2 1", Entries(Read(score, new MusicXmlReading { Part = "3" })));
        Assert.Equal(
            "there is no part 'Flute'; one of P1 (Drums), P2 (Voice), P3 (Bass)",
            Fault(score, new MusicXmlReading { Part = "Flute" })
        );
        Assert.Equal("there is no voice '7'; one of 1, 2", Fault(score, new MusicXmlReading { Voice = "7" }));
        Assert.Equal(
            "part 'Drums' has no pitched notes; another of P1 (Drums), P2 (Voice), P3 (Bass)",
            Fault(score, new MusicXmlReading { Part = "Drums" })
        );
        Assert.Equal(
            ["P1 Drums 1 1: ", "P2 Voice 1 0: 1 1, 2 2", "P3 Bass 1 0: 1 1"],
            Read(score)
                .Parts.Select(part =>
                    $"{part.Id} {part.Name} {part.Bars} {part.Unpitched}: "
                    + string.Join(", ", part.Voices.Select(voice => $"{voice.Name} {voice.Notes}"))
                )
        );
    }

    [Fact]
    public void Bars_first_read_like_parts_first()
    {
        const string Score = """
            <score-timewise><part-list><score-part id="P1"><part-name>G</part-name></score-part></part-list>
            <measure number="1"><part id="P1"><attributes><divisions>1</divisions></attributes><note><pitch><step>A</step><octave>2</octave></pitch><duration>4</duration></note></part>
            <part id="P2"><note><pitch><step>A</step><octave>3</octave></pitch><duration>4</duration></note></part></measure>
            <measure number="2"><part id="P1"><note><pitch><step>B</step><octave>2</octave></pitch><duration>4</duration></note></part></measure></score-timewise>
            """;

        Assert.Equal("A2 1, B2 1", Entries(Read(Score)));
        Assert.Equal("A3 1", Entries(Read(Score, new MusicXmlReading { Part = "P2" })));
    }

    private static string Voiced(string pitch, int duration, string voice) =>
        Note(pitch, duration, $"<voice>{voice}</voice>");

    private static string[] Remarks(MusicXmlImport read) =>
        [.. read.LeftOut.Select(remark => remark.ToString())];
}
