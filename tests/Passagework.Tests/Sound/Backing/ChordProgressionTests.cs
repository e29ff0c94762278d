using Passagework.Foundation;
using Passagework.Sound.Backing;

namespace Passagework.Tests.Sound.Backing;

public sealed class ChordProgressionTests
{
    [Theory]
    [InlineData("Am7 | D7", "Am7 | D7")]
    [InlineData("| Am7 D7 | % | Gmaj7 |", "Am7 D7 | Am7 D7 | Gmaj7")]
    [InlineData("  C/E|F#m7b5  ", "C/E | F#m7b5")]
    public void Bars_are_read_between_lines(string text, string expected) =>
        Assert.Equal(expected, ChordProgression.Read(text).OrThrow().ToString());

    [Theory]
    [InlineData("", "bar 1: no chord; chords with lines between the bars, such as Am7 | D7")]
    [InlineData("%", "bar 1: '%' is no chord; a chord such as Am7, D7 or C/E")]
    [InlineData("Am7 | | D7", "bar 2: no chord; chords with lines between the bars, such as Am7 | D7")]
    [InlineData("Am7 | H7", "bar 2: 'H7' is no chord; a chord such as Am7, D7 or C/E")]
    public void What_is_no_chord_is_refused_with_its_bar(string text, string expected) =>
        Assert.Equal(
            expected,
            Assert.IsType<Outcome<ChordProgression>.Refused>(ChordProgression.Read(text)).Fault.ToString()
        );

    [Fact]
    public void Too_many_bars_are_refused() =>
        Assert.Equal(
            "too many chords; at most 256 bars",
            Assert
                .IsType<Outcome<ChordProgression>.Refused>(
                    ChordProgression.Read(string.Join('|', Enumerable.Repeat("C", 257)))
                )
                .Fault.ToString()
        );
}
