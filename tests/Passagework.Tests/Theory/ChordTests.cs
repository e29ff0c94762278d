using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class ChordTests
{
    [Theory]
    [InlineData("C", "C E G")]
    [InlineData("Am", "A C E")]
    [InlineData("Bdim", "B D F")]
    [InlineData("Caug", "C E G#")]
    [InlineData("E5", "E B")]
    [InlineData("Bb5", "Bb F")]
    [InlineData("Dsus2", "D E A")]
    [InlineData("Dsus4", "D G A")]
    [InlineData("F6", "F A C D")]
    [InlineData("Am6", "A C E F#")]
    [InlineData("D7", "D F# A C")]
    [InlineData("Cmaj7", "C E G B")]
    [InlineData("Am7", "A C E G")]
    [InlineData("Ammaj7", "A C E G#")]
    [InlineData("F#m7b5", "F# A C E")]
    [InlineData("Cdim7", "C Eb Gb A")]
    [InlineData("Ebdim7", "Eb Gb A C")]
    [InlineData("G7sus4", "G C D F")]
    [InlineData("E9", "E G# B D F#")]
    [InlineData("Cmaj9", "C E G B D")]
    [InlineData("Am9", "A C E G B")]
    [InlineData("Cadd9", "C E G D")]
    [InlineData("E7b9", "E G# B D F")]
    [InlineData("E7#9", "E G# B D G")]
    [InlineData("A13", "A C# E G B F#")]
    [InlineData("C/E", "C E G")]
    public void TryParse_reads_the_symbol_and_spells_the_tones(string symbol, string tones)
    {
        var chord = Music.Chord(symbol);

        Assert.Equal(tones, string.Join(' ', chord.Tones));
        Assert.Equal(symbol, chord.ToString());
    }

    [Theory]
    [InlineData("Am7", "Amin7")]
    [InlineData("Am", "A-")]
    [InlineData("CM7", "Cmaj7")]
    [InlineData("C", "Cmaj")]
    [InlineData("Bdim", "B°")]
    [InlineData("Bm7b5", "Bø")]
    [InlineData("Caug", "C+")]
    [InlineData("Dsus4", "Dsus")]
    public void TryParse_knows_other_ways_of_writing(string usual, string written) =>
        Assert.Equal(Music.Chord(usual), Music.Chord(written));

    [Fact]
    public void TryParse_reads_every_kind_on_every_root_and_writes_it_back()
    {
        foreach (var root in Enumerable.Range(0, 21).Select(n => NoteName.Of(n / 3, (n % 3) - 1)))
        {
            foreach (var kind in ChordKind.All)
            {
                var chord = new Chord(root, kind, NoteName.Of(4, -1));

                Assert.Equal(chord, Music.Chord(chord.ToString()));
                Assert.Equal(
                    kind.Degrees.Select(degree => (root.PitchClass + degree.Semitones) % 12),
                    chord.Tones.Select(tone => tone.PitchClass)
                );
            }
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("H")]
    [InlineData("am7")]
    [InlineData("Am8")]
    [InlineData("A/")]
    [InlineData("A/H")]
    [InlineData("/E")]
    [InlineData("A/Ebb")]
    [InlineData("A /E")]
    [InlineData("A/E/G")]
    public void TryParse_refuses_what_is_no_chord(string? text) => Assert.False(Chord.TryParse(text, out _));

    [Fact]
    public void Contains_knows_chord_tones_and_the_bass()
    {
        var chord = Music.Chord("Am7/F#");

        Assert.True(chord.Contains(48));
        Assert.True(chord.Contains(54));
        Assert.False(chord.Contains(53));
    }

    [Theory]
    [InlineData("b7", 67)]
    [InlineData("1", 45)]
    [InlineData(null, 46)]
    public void DegreeOf_names_a_chord_tone(string? degree, int key) =>
        Assert.Equal(degree, Music.Chord("Am7").DegreeOf(key)?.ToString());
}
