using CsCheck;
using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class IntervalTests
{
    [Theory]
    [InlineData("P1", "perfect unison", "A2", "A2")]
    [InlineData("m2", "minor second", "E3", "F3")]
    [InlineData("M2", "major second", "A2", "B2")]
    [InlineData("A1", "augmented unison", "C4", "C#4")]
    [InlineData("A2", "augmented second", "C4", "D#4")]
    [InlineData("m3", "minor third", "C4", "Eb4")]
    [InlineData("M3", "major third", "A2", "C#3")]
    [InlineData("d3", "diminished third", "C#4", "Eb4")]
    [InlineData("P4", "perfect fourth", "B2", "E3")]
    [InlineData("A4", "augmented fourth", "F3", "B3")]
    [InlineData("d5", "diminished fifth", "B3", "F4")]
    [InlineData("P5", "perfect fifth", "B2", "F#3")]
    [InlineData("m6", "minor sixth", "A2", "F3")]
    [InlineData("M6", "major sixth", "A2", "F#3")]
    [InlineData("dd7", "doubly diminished seventh", "C#4", "Bbb4")]
    [InlineData("d7", "diminished seventh", "C#4", "Bb4")]
    [InlineData("m7", "minor seventh", "A2", "G3")]
    [InlineData("M7", "major seventh", "A2", "G#3")]
    [InlineData("P8", "perfect octave", "Cb4", "Cb5")]
    [InlineData("M9", "major ninth", "A2", "B3")]
    [InlineData("m10", "minor tenth", "A2", "C4")]
    [InlineData("P15", "perfect fifteenth", "E2", "E4")]
    [InlineData("P22", "perfect interval of 22 letters", "E2", "E5")]
    [InlineData("-P5", "perfect fifth down", "E4", "A3")]
    [InlineData("-A1", "augmented unison down", "C4", "Cb4")]
    [InlineData("-m3", "minor third down", "C4", "A3")]
    [InlineData("d2", "diminished second", "B#3", "C4")]
    public void Between_pitches_counts_letters_and_semitones(string sign, string name, string from, string to)
    {
        var interval = Music.Pitch(to) - Music.Pitch(from);

        Assert.Equal(sign, interval.ToString());
        Assert.Equal(name, interval.Name);
    }

    [Theory]
    [InlineData("Eb4", "C4", 2, 3)]
    [InlineData("D#4", "C4", 1, 3)]
    [InlineData("C4", "B#3", 1, 0)]
    [InlineData("G3", "C4", -3, -5)]
    [InlineData("C-1", "D-1", -1, -2)]
    public void Added_to_a_pitch_gives_the_spelled_pitch(
        string expected,
        string from,
        int letters,
        int semitones
    ) => Assert.Equal(Music.Pitch(expected), Music.Pitch(from) + new Interval(letters, semitones));

    [Fact]
    public void Taken_from_a_pitch_goes_down() =>
        Assert.Equal(Music.Pitch("F#3"), Music.Pitch("A3") - new Interval(2, 3));

    [Fact]
    public void Added_to_a_pitch_is_refused_beyond_three_signs() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Music.Pitch("C4") + new Interval(0, 4));

    [Fact]
    public void Added_to_an_interval_goes_on() =>
        Assert.Equal("P5", (new Interval(2, 4) + new Interval(2, 3)).ToString());

    [Fact]
    public void Default_is_the_unison() => Assert.Equal("P1", default(Interval).ToString());

    [Fact]
    public void Between_two_pitches_leads_from_one_to_the_other()
    {
        var pitch = Gen.Int[0, 6]
            .Select(
                Gen.Int[-3, 3],
                Gen.Int[-1, 9],
                (letter, alteration, octave) => new SpelledPitch(NoteName.Of(letter, alteration), octave)
            );

        pitch.Select(pitch).Sample((low, high) => low + (high - low) == high && high - (high - low) == low);
    }
}
