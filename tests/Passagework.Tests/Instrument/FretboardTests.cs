using Passagework.Instrument;
using static Passagework.Tests.Instrument.Necks;

namespace Passagework.Tests.Instrument;

public class FretboardTests
{
    // Positions of a pitch: common practice; Lombardo & Radicioni 2005 print the list for E4 up to fret 14.
    [Theory]
    [InlineData(64, "1:0 2:5 3:9 4:14 5:19 6:24")]
    [InlineData(45, "5:0 6:5")]
    [InlineData(69, "1:5 2:10 3:14 4:19 5:24")]
    public void PlacesOf_finds_every_place_of_a_pitch(int midi, string expected) =>
        Assert.Equal(expected, string.Join(' ', Tuned("standard", frets: 24).PlacesOf(midi)));

    [Fact]
    public void PlacesOf_counts_from_the_capo() =>
        Assert.Equal("2:2 3:6 4:11 5:16", string.Join(' ', Tuned("standard", capo: 3).PlacesOf(64)));

    // MIDI keys of the open strings, from the highest-numbered string to string 1 (equal temperament, C4 = 60).
    [Theory]
    [InlineData("standard", "40 45 50 55 59 64")]
    [InlineData("half step down", "39 44 49 54 58 63")]
    [InlineData("whole step down", "38 43 48 53 57 62")]
    [InlineData("drop D", "38 45 50 55 59 64")]
    [InlineData("drop C", "36 43 48 53 57 62")]
    [InlineData("double drop D", "38 45 50 55 59 62")]
    [InlineData("DADGAD", "38 45 50 55 57 62")]
    [InlineData("open G", "38 43 50 55 59 62")]
    [InlineData("open D", "38 45 50 54 57 62")]
    [InlineData("open E", "40 47 52 56 59 64")]
    [InlineData("all fourths", "40 45 50 55 60 65")]
    [InlineData("seven-string", "35 40 45 50 55 59 64")]
    [InlineData("eight-string", "30 35 40 45 50 55 59 64")]
    [InlineData("bass", "28 33 38 43")]
    [InlineData("five-string bass", "23 28 33 38 43")]
    public void Tunings_known_by_name_sound_as_they_should(string name, string expected)
    {
        var tuning = Tuned(name).Tuning;
        var open = Enumerable
            .Range(1, tuning.StringCount)
            .Reverse()
            .Select(number => tuning.Open(number).Midi);

        Assert.Equal(expected, string.Join(' ', open));
    }

    [Fact]
    public void MidiAt_sounds_with_the_capo() =>
        Assert.Equal(48, Tuned("standard", capo: 3).MidiAt(At("6:5")));

    [Theory]
    [InlineData("6:22", true)]
    [InlineData("6:23", false)]
    [InlineData("7:1", false)]
    public void Has_knows_the_strings_and_the_frets(string place, bool expected) =>
        Assert.Equal(expected, Fretboard.Standard.Has(At(place)));
}
