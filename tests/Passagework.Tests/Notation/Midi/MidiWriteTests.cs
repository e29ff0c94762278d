using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Theory;

namespace Passagework.Tests.Notation;

public sealed class MidiWriteTests
{
    private static readonly MidiWriting Bare = new() { Format = MidiFormat.Single, Remark = false };

    private static readonly Recipe TwoNotes = new()
    {
        Title = "Two",
        Notes = Music.Set("A", "minor pentatonic"),
        Rhythm = new RhythmPlan { TempoBpm = 80 },
        Written = new WrittenLine([
            new WrittenEntry { Pitch = Music.Pitch("A2"), Duration = Fraction.Of(1, 8) },
            new WrittenEntry { Duration = Fraction.Of(1, 8) },
            new WrittenEntry
            {
                Pitch = Music.Pitch("C3"),
                Duration = Fraction.Of(1, 4),
                Accent = true,
            },
        ]),
    };

    [Fact]
    public void One_track_holds_name_metre_key_tempo_program_and_notes() =>
        AssertBytes(
            "4D546864 00000006 0000 0001 01E0 4D54726B 00000033 "
                + "00FF030354776F 00FF580404021808 00FF59020001 00FF51030B71B0 "
                + "00C019 00902D74 81702D00 8170306C 83603000 00FF2F00",
            Hex(TwoNotes, Bare)
        );

    [Fact]
    public void Two_tracks_hold_the_frame_and_the_notes() =>
        AssertBytes(
            "4D546864 00000006 0001 0002 01E0 "
                + "4D54726B 00000021 00FF030354776F 00FF580404021808 00FF59020001 00FF51030B71B0 8740FF2F00 "
                + "4D54726B 00000021 00FF0306477569746172 00C019 00902D40 81702D00 81703040 83603000 00FF2F00",
            Hex(TwoNotes, new MidiWriting { Remark = false, Accents = AccentMode.None })
        );

    [Fact]
    public void Same_input_gives_the_same_bytes() =>
        Assert.Equal(Hex(MidiLines.Exercise("straight-up")), Hex(MidiLines.Exercise("straight-up")));

    // Ticks of 480 for swung eighths as tabled with the ratios: 3:2 and 2:1.
    [Theory]
    [InlineData("3/5", "8220")]
    [InlineData("2/3", "8240")]
    [InlineData("1/2", "8170")]
    public void Swing_moves_the_ticks_of_the_second_of_each_pair(string share, string delta)
    {
        Assert.True(Swing.TryOf(MidiLines.Time(share), out var swing));
        var recipe = Pitched(["E4", "F4"], "1/8") with
        {
            Rhythm = new RhythmPlan { NotesPerBeat = 2, Swing = swing },
        };

        Assert.Contains(
            $"00904040{delta}4000",
            Hex(recipe, Bare with { Accents = AccentMode.None }),
            StringComparison.Ordinal
        );
    }

    // 4/4 in sixteenths: the beats 96 80 88 80, eighths between 72, the rest 64; a group start 20 more, and 8 more
    // for the accent that is written there.
    [Theory]
    [InlineData(AccentMode.Meter, "104 64 72 72 80 64 80 64 88 72 72 64 88 64 72 72")]
    [InlineData(AccentMode.None, "64 64 64 64 64 64 64 64 64 64 64 64 64 64 64 64")]
    [InlineData(AccentMode.Groups, "92 64 64 92 64 64 92 64 64 92 64 64 92 64 64 92")]
    [InlineData(AccentMode.Both, "124 64 72 92 80 64 100 64 88 92 72 64 108 64 72 92")]
    public void Velocities_follow_the_accent_map(AccentMode mode, string velocities)
    {
        var threes = MidiLines.Exercise("groups-of-three-up");
        var file = Passagework.Notation.Midi.Write(
            MidiLines.Of(threes with { Rhythm = threes.Rhythm with { NotesPerBeat = 4 } }),
            Bare with
            {
                Accents = mode,
            }
        );
        var first = Convert.ToHexString(file).IndexOf("00C019", StringComparison.Ordinal) / 2;

        // delta, key, velocity, delta, key, 0; the first with its status byte.
        var loud = Enumerable.Range(0, 16).Select(note => file[first + 6 + (note * 6)]);

        Assert.Equal(velocities, string.Join(' ', loud));
    }

    [Theory]
    [InlineData("3/4", "00FF580403021808")]
    [InlineData("6/8", "00FF580406032408")]
    [InlineData("7/8", "00FF580407030C08")]
    [InlineData("5/16", "00FF580405040608")]
    [InlineData("2/2", "00FF580402013008")]
    public void Metre_is_written_with_a_click_each_felt_beat(string text, string bytes)
    {
        Assert.True(Meter.TryParse(text, out var meter));

        Assert.Contains(
            bytes,
            Hex(Pitched(["E4"], "1/8") with { Rhythm = new RhythmPlan { Meter = meter } }, Bare),
            StringComparison.Ordinal
        );
    }

    // The tabled tempi; a tempo of dotted quarters is written in quarters.
    [Theory]
    [InlineData(60, "4/4", "0F4240")]
    [InlineData(72, "4/4", "0CB735")]
    [InlineData(90, "4/4", "0A2C2B")]
    [InlineData(100, "4/4", "0927C0")]
    [InlineData(120, "4/4", "07A120")]
    [InlineData(160, "4/4", "05B8D8")]
    [InlineData(200, "4/4", "0493E0")]
    [InlineData(80, "6/8", "07A120")]
    public void Tempo_is_microseconds_per_quarter(double bpm, string text, string bytes)
    {
        Assert.True(Meter.TryParse(text, out var meter));
        var rhythm = new RhythmPlan { Meter = meter, TempoBpm = bpm };

        Assert.Contains(
            "00FF5103" + bytes,
            Hex(Pitched(["E4"], "1/8") with { Rhythm = rhythm }, Bare),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Tempo_map_is_written_change_by_change()
    {
        Assert.True(Tempo.TryOf(60, out var slow));
        Assert.True(Tempo.TryOf(120, out var fast));
        var quarter = Fraction.Of(1, 4);

        var hex = Hex(
            TwoNotes,
            Bare with
            {
                Format = MidiFormat.Simultaneous,
                Tempi = [new(Fraction.Zero, slow, quarter), new(Fraction.Of(1, 2), fast, quarter)],
            }
        );

        Assert.Contains("00FF51030F42408740FF510307A12000FF2F00", hex, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("C", "major", "00FF59020000")]
    [InlineData("Eb", "natural minor", "00FF5902FA01")]
    [InlineData("F#", "mixolydian", "00FF59020600")]
    [InlineData("D", "dorian", "00FF5902FF01")]
    public void Key_signature_is_the_major_or_minor_key_of_the_root(
        string root,
        string scale,
        string bytes
    ) =>
        Assert.Contains(
            bytes,
            Hex(Pitched(["E4"], "1/8") with { Notes = Music.Set(root, scale) }, Bare),
            StringComparison.Ordinal
        );

    [Fact]
    public void Key_with_more_than_seven_signs_is_left_out() =>
        Assert.DoesNotContain(
            "FF5902",
            Hex(Pitched(["E4"], "1/8") with { Notes = Music.Set("G#", "major") }, Bare),
            StringComparison.Ordinal
        );

    [Fact]
    public void Capo_raises_the_keys_and_the_signature()
    {
        var recipe = TwoNotes with
        {
            Instrument = new() { Capo = 3 },
            Written = new WrittenLine([
                new WrittenEntry
                {
                    Place = Passagework.Instrument.Place.At(5, 0),
                    Duration = Fraction.Of(1, 8),
                },
            ]),
        };

        var hex = Hex(recipe, Bare);

        Assert.Contains("00FF5902FD01", hex, StringComparison.Ordinal); // C minor: three flats
        Assert.Contains("009030", hex, StringComparison.Ordinal); // C3
    }

    [Theory]
    [InlineData(0)]
    [InlineData(129)]
    public void Program_is_one_of_128(int program) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new MidiWriting { Program = program });

    [Fact]
    public void Line_before_the_first_bar_line_is_refused()
    {
        var played = MidiLines.Of(TwoNotes);
        var early = played.Line with
        {
            Notes = [.. played.Line.Notes.Select(note => note with { Onset = note.Onset - Fraction.One })],
        };

        Assert.Throws<ArgumentException>(() => Passagework.Notation.Midi.Write(played with { Line = early }));
    }

    private static void AssertBytes(string expected, string hex) =>
        Assert.Equal(expected.Replace(" ", "", StringComparison.Ordinal), hex);

    private static Recipe Pitched(ImmutableArray<string> pitches, string length) =>
        new()
        {
            Written = new WrittenLine([
                .. pitches.Select(pitch => new WrittenEntry
                {
                    Pitch = Music.Pitch(pitch),
                    Duration = MidiLines.Time(length),
                }),
            ]),
        };

    private static string Hex(Recipe recipe, MidiWriting? options = null) =>
        Convert.ToHexString(Passagework.Notation.Midi.Write(MidiLines.Of(recipe), options));
}
