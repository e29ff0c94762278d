using CsCheck;
using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class SpelledPitchTests
{
    [Theory]
    [InlineData("C4", 60)]
    [InlineData("A2", 45)]
    [InlineData("E2", 40)]
    [InlineData("B#3", 60)]
    [InlineData("Cb4", 59)]
    [InlineData("F##4", 67)]
    [InlineData("Bbb3", 57)]
    [InlineData("C-1", 0)]
    [InlineData("G9", 127)]
    public void Midi_counts_from_middle_C_as_60(string pitch, int key)
    {
        Assert.Equal(key, Music.Pitch(pitch).Midi);
        Assert.Equal(Music.Pitch(pitch), SpelledPitch.At(Music.Pitch(pitch).Name, key));
    }

    [Fact]
    public void At_refuses_a_key_of_another_pitch_class() =>
        Assert.Throws<ArgumentException>(() => SpelledPitch.At(Music.Name("C"), 61));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("4")]
    [InlineData("C")]
    [InlineData("c4")]
    [InlineData("C#b4")]
    [InlineData("C10")]
    [InlineData("C-2")]
    [InlineData("C####4")]
    [InlineData("C 4")]
    public void TryParse_refuses_what_is_no_pitch(string? text) =>
        Assert.False(SpelledPitch.TryParse(text, out _));

    [Fact]
    public void ToString_reads_back() =>
        Gen.Int[0, 6]
            .Select(Gen.Int[-3, 3], Gen.Int[-1, 9])
            .Sample(
                (letter, alteration, octave) =>
                {
                    var pitch = new SpelledPitch(NoteName.Of(letter, alteration), octave);
                    return SpelledPitch.TryParse(pitch.ToString(), out var read) && read == pitch;
                }
            );

    [Fact]
    public void Default_is_C0() => Assert.Equal("C0", default(SpelledPitch).ToString());
}
