using System.Security.Cryptography;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class MidiContainerTests
{
    // Standard MIDI File 1.0, variable-length quantities.
    [Theory]
    [InlineData("00", 0)]
    [InlineData("7F", 127)]
    [InlineData("8100", 128)]
    [InlineData("8120", 160)]
    [InlineData("8360", 480)]
    [InlineData("8740", 960)]
    [InlineData("C000", 8192)]
    [InlineData("FF7F", 16383)]
    [InlineData("FFFFFF7F", 0x0FFF_FFFF)]
    [InlineData("FFFFFF7FFF010001", 0x1000_0000)]
    public void Deltas_are_written_seven_bits_a_byte(string delta, long ticks)
    {
        var track = new MidiTrackBytes();

        track.Meta(ticks, 0x2F, []);

        Assert.Equal(delta + "FF2F00", Convert.ToHexString(MidiTrackBytes.File(0, 480, track)[22..]));
    }

    // The example's length and hash were published with it.
    [Fact]
    public void Example_is_written_byte_for_byte()
    {
        var track = new MidiTrackBytes();
        track.Meta(0, 0x03, "Gtr"u8);
        track.Meta(0, 0x58, [2, 2, 24, 8]);
        track.Meta(0, 0x59, [0, 1]);
        track.Meta(0, 0x51, [0x0B, 0x71, 0xB0]);
        track.Channel(0, 0xB0, 0, 0);
        track.Channel(0, 0xB0, 32, 0);
        track.Channel(0, 0xC0, 25);
        foreach (
            var (control, value) in new[] { (101, 0), (100, 0), (6, 2), (38, 0), (101, 127), (100, 127) }
        )
        {
            track.Channel(0, 0xB0, (byte)control, (byte)value);
        }

        var time = 0;
        foreach (
            var (key, length, loud) in new[]
            {
                (45, 160, 100),
                (48, 160, 80),
                (50, 160, 80),
                (52, 240, 100),
                (54, 240, 80),
            }
        )
        {
            track.Channel(time, 0x90, (byte)key, (byte)loud);
            time += length;
            track.Channel(time, 0x90, (byte)key, 0);
        }

        track.Meta(time, 0x2F, []);

        var file = MidiTrackBytes.File(0, 480, track);

        Assert.Equal(Convert.ToHexString(MidiFiles.Bytes(MidiFiles.Example)), Convert.ToHexString(file));
        Assert.Equal(119, file.Length);
        Assert.Equal(
            "D8594D9EC563DD66D8C747454F62307D777FD1410164BE7CA01853568B7F2770",
            Convert.ToHexString(SHA256.HashData(file)),
            ignoreCase: true
        );
    }

    [Fact]
    public void Example_is_read_as_a_triplet_and_two_eighths()
    {
        var import = MidiFiles.Read(MidiFiles.Bytes(MidiFiles.Example));

        Assert.Equal("A2 C3 D3 E3 F#3", MidiFiles.Pitches(import));
        Assert.Equal("1/12 1/12 1/12 1/8 1/8", MidiFiles.Lengths(import));
        Assert.Equal("2/4", import.Recipe.Rhythm.Meter.ToString());
        Assert.Equal(80, import.Recipe.Rhythm.TempoBpm);
        Assert.Equal("Gtr", import.Recipe.Title);
        Assert.Equal(
            ("A", "natural minor"),
            (import.Recipe.Notes?.Root.ToString(), import.Recipe.Notes?.Scale)
        );
        Assert.Empty(import.Warnings);
        Assert.Equal(new MidiResidual(0, 0, 0, 0), import.Residual);
    }

    [Theory]
    [InlineData(480, "1/4 1/8 1/12 1/16 1/20")]
    [InlineData(1680, "1/28")]
    [InlineData(1680, "1/4 1/28 1/40")]
    [InlineData(5040, "1/36")]
    [InlineData(5040, "1/36 1/28")]
    [InlineData(484, "1/44")]
    public void Resolution_is_the_smallest_that_puts_every_time_on_a_tick(int division, string times)
    {
        var resolution = MidiResolution.For(times.Split(' ').Select(MidiLines.Time));

        Assert.Equal(new MidiResolution(division, IsExact: true), resolution);
    }

    [Fact]
    public void Resolution_falls_back_to_the_nearest_tick_of_5040()
    {
        var resolution = MidiResolution.For([MidiLines.Time("1/140000")]);

        Assert.Equal(new MidiResolution(5040, IsExact: false), resolution);
        Assert.Equal(1, resolution.TickOf(MidiLines.Time("1/40000")));
        Assert.Equal(0, resolution.TickOf(MidiLines.Time("1/50000")));
    }
}
