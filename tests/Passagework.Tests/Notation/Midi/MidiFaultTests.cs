using System.Diagnostics;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class MidiFaultTests
{
    private const string Header = "4D546864 00000006 0000 0001 01E0 ";
    private const string Note = "00904050 83604000 ";

    [Theory]
    [InlineData("byte 0: is no Standard MIDI File; a Standard MIDI File, which begins with MThd", "")]
    [InlineData(
        "byte 0: is no Standard MIDI File; a Standard MIDI File, which begins with MThd",
        "52494646 00"
    )]
    [InlineData("byte 4: the file is cut off", "4D546864 0000")]
    [InlineData("byte 12: the file is cut off", "4D546864 00000006 0000 0001")]
    [InlineData("byte 4: a header of 5 bytes; 6", "4D546864 00000005 0000 0001 01E0")]
    [InlineData("byte 14: the file is cut off", "4D546864 FFFFFFFF 0000 0001 01E0")]
    [InlineData("byte 8: format 3; 0, 1 or 2", "4D546864 00000006 0003 0001 01E0")]
    [InlineData("byte 12: 0 ticks per quarter note; 1 to 32767", "4D546864 00000006 0000 0001 0000")]
    [InlineData(
        "byte 12: times are film frames, which say nothing about beats; ticks per quarter note",
        "4D546864 00000006 0000 0001 E728"
    )]
    [InlineData("no notes in the file; a track with notes", Header)]
    [InlineData("no notes in the file; a track with notes", Header + "4D54726B 00000004 00FF2F00")]
    [InlineData("byte 18: a chunk of 5 bytes; the file has 4 more", Header + "4D54726B 00000005 00FF2F00")]
    [InlineData(
        "byte 18: a chunk of 4294967295 bytes; the file has 4 more",
        Header + "4D54726B FFFFFFFF 00FF2F00"
    )]
    [InlineData("byte 18: a chunk of 9 bytes; the file has 0 more", Header + "58585858 00000009")]
    [InlineData("byte 24: the file is cut off", Header + "4D54726B 00000002 0090")]
    [InlineData(
        "byte 25: an event goes on behind the end of its track",
        Header + "4D54726B 00000003 009040 00FF2F00"
    )]
    [InlineData(
        "byte 23: data without a status byte before it; an event",
        Header + "4D54726B 00000004 00404000"
    )]
    [InlineData(
        "byte 25: a status byte in the middle of an event; data below 128",
        Header + "4D54726B 00000004 009040FF"
    )]
    [InlineData(
        "byte 24: a status byte in the middle of an event; data below 128",
        Header + "4D54726B 00000004 00909040"
    )]
    [InlineData("byte 22: a number longer than four bytes", Header + "4D54726B 00000006 8080808000FF")]
    [InlineData("byte 26: the file is cut off", Header + "4D54726B 00000004 00FF017F")]
    [InlineData(
        "byte 23: the status byte F1 has no place in a file; a channel, system-exclusive or meta event",
        Header + "4D54726B 00000003 00F100"
    )]
    public void Bad_file_is_refused_with_its_place(string fault, string hex) =>
        Assert.Equal(fault, MidiFiles.FaultOf(MidiFiles.Bytes(hex)));

    [Fact]
    public void Pitch_off_the_instrument_is_refused_with_bar_and_beat() =>
        Assert.Equal(
            "bar 2, beat 3.5: the instrument has no D2; pitches that lie on standard, 22 frets",
            MidiFiles.FaultOf(MidiFiles.Track(MidiFiles.Notes((40, 0, 480), (38, 3120, 240))))
        );

    [Fact]
    public void Pick_up_is_counted_as_the_first_bar() =>
        Assert.Equal(
            "bar 1, beat 3: the instrument has no D2; pitches that lie on standard, 22 frets",
            MidiFiles.FaultOf(
                MidiFiles.File(
                    0,
                    480,
                    "00FF580401021808 00902650 83602600 00FF580403021808 00904150 83604100 00FF2F00"
                )
            )
        );

    [Fact]
    public void Track_that_is_not_there_is_refused_with_those_that_are() =>
        Assert.Equal(
            "there is no track 3; 1 to 2: 1 'Lead' 1 notes, 2 '' 2 notes",
            MidiFiles.FaultOf(
                MidiFiles.File(1, 480, "00FF03044C656164 " + Note + "00FF2F00", Note + Note + "00FF2F00"),
                new MidiReading { Track = 3 }
            )
        );

    [Fact]
    public void More_than_20000_onsets_are_refused()
    {
        var notes = string.Concat(Enumerable.Repeat("00904050 104000 ", 20_001));

        Assert.Equal(
            "track 1 has 20001 onsets over 320000 ticks; a line of at most 20,000 notes and rests",
            MidiFiles.FaultOf(MidiFiles.Track(notes))
        );
    }

    [Fact]
    public void Silence_beyond_any_line_is_refused() =>
        Assert.Equal(
            "track 1 has 2 onsets over 536871392 ticks; a line of at most 20,000 notes and rests",
            MidiFiles.FaultOf(
                MidiFiles.Track(Note + "FFFFFF7FFF0100 FFFFFF7FFF0100 02904050 104000 ", division: 1)
            )
        );

    [Fact]
    public void File_over_4_MB_is_refused() =>
        Assert.Equal(
            "the file is larger than 4 MB; at most 4,194,304 bytes",
            MidiFiles.FaultOf(new byte[Passagework.Notation.Midi.MostBytes + 1])
        );

    [Fact]
    public void Four_thousand_notes_at_once_are_one_chord()
    {
        var on = string.Concat(Enumerable.Range(0, 4000).Select(i => $"0090{40 + (i % 41):X2}50"));
        var off = string.Concat(Enumerable.Range(0, 4000).Select(i => $"00{40 + (i % 41):X2}00"));

        var import = MidiFiles.Read(MidiFiles.Track(on + "83604000" + off));

        Assert.Equal("G#5+G5+F5+A#4+F4+C4", MidiFiles.Pitches(import));
        Assert.Equal((3994, 1000), (import.NotesLeftOut, import.LeftOut.Length));
        Assert.Equal(new MidiLeftOut(80, "bar 1, beat 1"), import.LeftOut[0]);
    }

    // Four megabytes of notes, of texts that are no UTF-8, and of empty tracks: some two seconds each. Work that
    // grows with the square would take hours, so the bound leaves room for a machine that does other things as well.
    [Theory]
    [InlineData("9040 50", "00 40 50")]
    [InlineData("FF01 02FFFF", "00 FF01 02FFFF")]
    [InlineData("90 4050 00 40 00", "00 40 50 01 40 00")]
    [InlineData("90 4050 00 40 00", "00 FF5803020000 00 FF51030000FF 00 FF5902000100")]
    public void Large_files_take_bounded_time(string first, string again)
    {
        var unit = MidiFiles.Bytes(again);
        var count = (Passagework.Notation.Midi.MostBytes - 100) / unit.Length;
        var body = MidiFiles
            .Bytes("00" + first)
            .Concat(Enumerable.Repeat(unit, count).SelectMany(bytes => bytes));
        var track = body.Concat(MidiFiles.Bytes("00FF2F00")).ToArray();
        byte[] file = [.. MidiFiles.Bytes($"{Header} 4D54726B {track.Length:X8}"), .. track];

        var begun = Stopwatch.GetTimestamp();
        var fault = MidiFiles.FaultOf(file);

        Assert.True(Stopwatch.GetElapsedTime(begun) < TimeSpan.FromSeconds(30), fault);
    }
}
