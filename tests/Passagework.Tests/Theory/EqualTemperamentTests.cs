using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class EqualTemperamentTests
{
    // ISO 16:1975 with f = 440·2^((n−69)/12), to three decimals.
    [Theory]
    [InlineData("C", 65.406, 130.813, 261.626, 523.251, 1046.502)]
    [InlineData("D", 73.416, 146.832, 293.665, 587.330, 1174.659)]
    [InlineData("E", 82.407, 164.814, 329.628, 659.255, 1318.510)]
    [InlineData("F", 87.307, 174.614, 349.228, 698.456, 1396.913)]
    [InlineData("G", 97.999, 195.998, 391.995, 783.991, 1567.982)]
    [InlineData("A", 110.000, 220.000, 440.000, 880.000, 1760.000)]
    [InlineData("B", 123.471, 246.942, 493.883, 987.767, 1975.533)]
    public void Frequency_of_a_natural_note_is_that_of_the_table(
        string letter,
        double second,
        double third,
        double fourth,
        double fifth,
        double sixth
    )
    {
        double[] row = [second, third, fourth, fifth, sixth];

        for (var octave = 2; octave <= 6; octave++)
        {
            var key = new SpelledPitch(Music.Name(letter), octave).Midi;

            Assert.Equal(row[octave - 2], EqualTemperament.FrequencyOf(key).Value, 3);
        }
    }

    [Theory]
    [InlineData(30, 46.25)]
    [InlineData(35, 61.74)]
    [InlineData(28, 41.20)]
    [InlineData(40, 82.41)]
    [InlineData(64, 329.63)]
    public void Frequency_of_an_open_string_is_that_of_its_key(int key, double hertz) =>
        Assert.Equal(hertz, EqualTemperament.FrequencyOf(key).Value, 2);

    [Fact]
    public void Frequency_of_A4_is_exactly_440() =>
        Assert.Equal(440.0, EqualTemperament.FrequencyOf(69).Value);

    [Theory]
    [InlineData(69.0, 440.0)]
    [InlineData(40.0, 82.40688922821748)]
    [InlineData(69.5, 452.8929841231365)]
    public void Key_of_a_frequency_leads_back(double key, double hertz) =>
        Assert.Equal(key, Assert.NotNull(EqualTemperament.KeyOf(Hertz.Of(hertz))), 1e-9);

    [Fact]
    public void Key_of_silence_is_none() => Assert.Null(EqualTemperament.KeyOf(default));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void Hertz_refuses_what_is_no_frequency(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Hertz.Of(value));

    [Fact]
    public void Hertz_is_written_with_a_decimal_point() =>
        Assert.Equal("82.41 Hz", EqualTemperament.FrequencyOf(40).ToString());
}
