using Passagework.Instrument;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class MidiReadTests
{
    private const string Off = "83604000 ";

    // Onsets as a person plays them: up to 15 ms off at 120 beats a minute (14 ticks of 480).
    [Theory]
    [InlineData("1/16 1/16 1/16 1/16 1/16 1/16 1/16 1/16", 960, 3, 115, 251, 352, 470, 611, 709, 851)]
    [InlineData("1/12 1/12 1/12 1/12 1/12 1/12", 960, 0, 167, 309, 488, 631, 806)]
    [InlineData(
        "1/20 1/20 1/20 1/20 1/20 1/20 1/20 1/20 1/20 1/20",
        960,
        0,
        101,
        187,
        294,
        380,
        478,
        580,
        668,
        770,
        861
    )]
    [InlineData("1/8 1/8 1/16 1/16 1/8", 960, 5, 231, 488, 595, 726)]
    [InlineData("1/4 1/12 1/12 1/12", 960, 0, 481, 650, 794)]
    public void Played_onsets_are_written_as_what_was_meant(string lengths, int end, params int[] onsets)
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(end, onsets)));

        Assert.Equal(lengths, MidiFiles.Lengths(import));
    }

    // A sixty-fourth is no chord.
    [Fact]
    public void Notes_that_are_apart_are_not_merged() =>
        Assert.Equal(
            "1/64 15/64 1/4",
            MidiFiles.Lengths(MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(960, 0, 29, 487))))
        );

    // The last beat alone would rather be a sixteenth and the rest.
    [Fact]
    public void Doubtful_beat_is_read_as_the_others_are()
    {
        int[] onsets = [0, 163, 322, 480, 640, 801, 960, 1122, 1279, 1440, 1579];

        Assert.Equal(
            "1/12 1/12 1/12 1/12 1/12 1/12 1/12 1/12 1/12 1/12 1/6",
            MidiFiles.Lengths(MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(1920, onsets))))
        );
    }

    // At 24 ticks a quarter everything is a multiple of a tick, which proves nothing.
    [Fact]
    public void Coarse_ticks_are_not_taken_at_their_word() =>
        Assert.Equal(
            "1/8 1/8 1/8 1/8",
            MidiFiles.Lengths(
                MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(48, 0, 13, 24, 37), division: 24))
            )
        );

    [Fact]
    public void Residual_is_in_ticks_and_milliseconds()
    {
        // 3 and 10 ticks off, 480 a quarter at 60 beats a minute: 2.083 ms a tick.
        var file = MidiFiles.Track("00FF51030F4240" + MidiFiles.Played(960, 0, 243, 480, 730));

        var residual = MidiFiles.Read(file).Residual;

        Assert.Equal((10.0, 3.25), (residual.LargestTicks, residual.MeanTicks));
        Assert.Equal(
            (20.833333, 6.770833),
            (Math.Round(residual.LargestMs, 6), Math.Round(residual.MeanMs, 6))
        );
        Assert.Equal("at most 20.8 ms (10.0 ticks), 6.8 ms on average", residual.ToString());
    }

    // Septuplets do not fit 480 ticks: rounded to the nearest tick they are found all the same.
    [Fact]
    public void Rounded_septuplets_are_exact()
    {
        var onsets = Enumerable.Range(0, 14).Select(i => (int)Math.Round(i * 480 / 7.0)).ToArray();

        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(960, onsets)));

        Assert.Equal(string.Join(' ', Enumerable.Repeat("1/28", 14)), MidiFiles.Lengths(import));
        Assert.InRange(import.Residual.LargestTicks, 0.1, 0.5);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(96)]
    [InlineData(120)]
    [InlineData(192)]
    [InlineData(384)]
    [InlineData(1000)]
    [InlineData(32767)]
    public void Any_resolution_gives_the_same_lengths(int division)
    {
        var quarters = new[] { 0, 0.5, 1, 1.25, 1.5, 1.75, 2, 2 + (1 / 3.0), 2 + (2 / 3.0), 3 };
        var onsets = quarters.Select(time => (int)Math.Round(time * division)).ToArray();

        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(4 * division, onsets), division));

        Assert.Equal("1/8 1/8 1/16 1/16 1/16 1/16 1/12 1/12 1/12 1/4", MidiFiles.Lengths(import));
    }

    [Fact]
    public void Played_swing_is_written_straight_with_its_share()
    {
        // Off-beats around two to one.
        int[] onsets = [0, 322, 484, 795, 962, 1283, 1436, 1763, 1920, 2238, 2402, 2722];

        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(2880, onsets)));

        Assert.Equal(string.Join(' ', Enumerable.Repeat("1/8", 12)), MidiFiles.Lengths(import));
        Assert.Equal("2/3", import.Recipe.Rhythm.Swing.Share.ToString());
        Assert.Equal(
            "pairs of a beat are played 2.00 to 1; written straight with swing 2/3",
            MidiFiles.Warnings(import)
        );
    }

    [Fact]
    public void Swing_is_not_looked_for_when_not_wanted()
    {
        int[] onsets = [0, 320, 480, 800, 960, 1280, 1440, 1760];

        var import = MidiFiles.Read(
            MidiFiles.Track(MidiFiles.Played(1920, onsets)),
            new MidiReading { FindSwing = false }
        );

        Assert.Equal("1/6 1/12 1/6 1/12 1/6 1/12 1/6 1/12", MidiFiles.Lengths(import));
        Assert.True(import.Recipe.Rhythm.Swing.IsStraight);
    }

    // Triplets with all three notes somewhere, dotted figures, and fives are no swing.
    [Theory]
    [InlineData(0, 320, 480, 800, 960, 1280, 1440, 1760, 1920, 2080, 2240, 2400)]
    [InlineData(0, 360, 480, 840, 960, 1320, 1440, 1800, 1920, 2280)]
    [InlineData(0, 96, 192, 288, 384, 480, 576, 672, 768, 864, 960, 1248, 1440, 1728, 1920, 2208, 2400, 2688)]
    public void Other_figures_are_no_swing(params int[] onsets)
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Played(2880, onsets)));

        Assert.True(import.Recipe.Rhythm.Swing.IsStraight);
        Assert.Empty(import.Warnings);
        Assert.Equal(0, import.Residual.LargestTicks);
    }

    [Theory]
    [InlineData("1/4 1/4", 480, 480)] // whole
    [InlineData("1/4 1/4", 456, 480)] // 95 %: meant to last
    [InlineData("1/4 1/4", 361, 480)] // just over three quarters
    [InlineData("3/16 r1/16 1/4", 360, 480)] // three quarters: as played
    [InlineData("1/8 r1/8 1/4", 240, 480)]
    [InlineData("1/16 r3/16 1/4", 120, 480)]
    [InlineData("1/16 r3/16 1/4", 1, 480)] // never nothing: a quarter of a beat
    [InlineData("1/4 1/4", 500, 480)] // legato
    public void Ends_leave_rests_where_a_quarter_of_the_way_is_silent(string lengths, int length, int last)
    {
        var file = MidiFiles.Track(MidiFiles.Notes((60, 0, length), (62, 480, last)));

        Assert.Equal(lengths, MidiFiles.Lengths(MidiFiles.Read(file)));
    }

    [Fact]
    public void Notes_that_sound_on_are_cut_and_counted()
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Notes((64, 0, 960), (60, 480, 480))));

        Assert.Equal("E4 C4", MidiFiles.Pitches(import));
        Assert.Equal("1/4 1/4", MidiFiles.Lengths(import));
        Assert.Equal(
            "1 notes sound on into the next one; they end where it begins",
            MidiFiles.Warnings(import)
        );
    }

    [Fact]
    public void Track_with_most_notes_that_is_no_drum_track_is_chosen()
    {
        const string Few = "00904050 " + Off + "00FF2F00";
        const string Drums = "00994050 83604000 00404083604000 00FF2F00";
        const string Many = "00FF03044C656164 00904150 83604100 00415083604100 00FF2F00";
        var file = MidiFiles.File(1, 480, "00FF0304536F6E6700FF580403021808 00FF2F00", Few, Drums, Many);

        var import = MidiFiles.Read(file);

        Assert.Equal("F4 F4", MidiFiles.Pitches(import));
        Assert.Equal(
            [new(1, "", 1, false), new(2, "", 2, true), new MidiTrack(3, "Lead", 2, false)],
            import.Tracks
        );
        Assert.Equal(
            (3, "Song", "3/4"),
            (import.Track, import.Recipe.Title, import.Recipe.Rhythm.Meter.ToString())
        );
        Assert.Equal("E4 E4", MidiFiles.Pitches(MidiFiles.Read(file, new MidiReading { Track = 2 })));
    }

    [Fact]
    public void Channels_are_tracks_where_the_file_has_one()
    {
        var file = MidiFiles.File(0, 480, "00904050 00914350 00994450 8360804000 00814300 00894400 00FF2F00");

        Assert.Equal("E4", MidiFiles.Pitches(MidiFiles.Read(file)));
        Assert.Equal("G4", MidiFiles.Pitches(MidiFiles.Read(file, new MidiReading { Track = 2 })));
        Assert.Equal([false, false, true], MidiFiles.Read(file).Tracks.Select(track => track.IsDrums));
    }

    [Fact]
    public void Tracks_on_their_own_have_their_own_tempo_and_metre()
    {
        var file = MidiFiles.File(
            2,
            480,
            "00FF580403021808 00FF51030F4240 00904050 83604000 00FF2F00",
            "00FF580402021808 00FF510307A120 00904050 83604000 00FF2F00"
        );

        var second = MidiFiles.Read(file, new MidiReading { Track = 2 }).Recipe.Rhythm;

        Assert.Equal(("2/4", 120.0), (second.Meter.ToString(), second.TempoBpm));
    }

    [Fact]
    public void Pick_up_begins_late_in_the_first_bar()
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Notes((60, 1440, 480), (62, 1920, 480))));

        Assert.Equal("3/4", import.Recipe.Rhythm.StartOffset.ToString());
        Assert.Empty(import.Warnings);
    }

    // A short first bar with a metre of its own stands for a pick-up.
    [Fact]
    public void Short_first_metre_is_a_pick_up()
    {
        var file = MidiFiles.File(
            0,
            480,
            "00FF580401021808 00904050 83604000 00FF580403021808 00904150 83604100 00FF2F00"
        );

        var rhythm = MidiFiles.Read(file).Recipe.Rhythm;

        Assert.Equal(("3/4", "1/2"), (rhythm.Meter.ToString(), rhythm.StartOffset.ToString()));
    }

    [Fact]
    public void Silent_bars_at_the_beginning_are_left_out()
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Notes((60, 4320, 480))));

        Assert.Equal("1/4", import.Recipe.Rhythm.StartOffset.ToString());
        Assert.Equal("2 silent bars at the beginning are left out", MidiFiles.Warnings(import));
    }

    [Theory]
    [InlineData("Bb3 Db4", "00FF5902FB00")] // D flat major
    [InlineData("A#3 C#4", "00FF59020600")] // F sharp major
    [InlineData("A#3 C#4", "")] // sharps on the way up
    public void Pitches_are_spelled_by_the_key_signature(string pitches, string key) =>
        Assert.Equal(
            pitches,
            MidiFiles.Pitches(
                MidiFiles.Read(MidiFiles.Track(key + MidiFiles.Notes((58, 0, 480), (61, 480, 480))))
            )
        );

    [Fact]
    public void Key_is_named_as_if_the_capo_were_the_nut()
    {
        var import = MidiFiles.Read(
            MidiFiles.Track("00FF5902FD01" + MidiFiles.Notes((60, 0, 480))),
            new MidiReading { Instrument = new Fretboard { Capo = 3 } }
        );

        Assert.Equal("A", import.Recipe.Notes?.Root.ToString());
        Assert.Equal("C4", MidiFiles.Pitches(import));
    }

    [Theory]
    [InlineData("no metre; taken as 4/4", "")]
    [InlineData("a metre of 17/4 is none that a line can have; taken as 4/4", "00FF580411021808")]
    [InlineData(
        "a metre of 4 over 2 to the power of 255 is none that a line can have; taken as 4/4",
        "00FF580404FF1808"
    )]
    [InlineData("a tempo of 0 µs a quarter note is left out", "00FF580404021808 00FF5103000000")]
    [InlineData(
        "byte 31: track 1: a tempo, metre or key that says nothing is left out",
        "00FF580404021808 00FF59020800"
    )]
    [InlineData(
        "the tempo changes; the line keeps that of its first note",
        "00FF580404021808 00FF510307A120 10FF510307A121"
    )]
    [InlineData(
        "the metre changes; the line keeps 4/4",
        "00FF580404021808 00904050 83604000 8F00FF580403021808"
    )]
    [InlineData(
        "byte 39: track 1: running status goes on behind an event that ends it",
        "00FF580404021808 00904050 10FF0100 104050"
    )]
    public void What_a_line_cannot_keep_is_said(string warning, string events)
    {
        var file = MidiFiles.File(0, 480, events + "00904050 83604000 00FF2F00");

        Assert.Contains(warning, MidiFiles.Warnings(MidiFiles.Read(file)), StringComparison.Ordinal);
    }

    [Fact]
    public void Loose_files_are_read_with_warnings()
    {
        byte[] file =
        [
            .. MidiFiles.Bytes("4D546864 00000008 0001 0003 01E0 0000"),
            .. MidiFiles.Bytes("58464948 00000002 0000"),
            .. MidiFiles.Bytes("4D54726B 00000014 00FF580404021808 00904050 83604000 00904150"),
            .. MidiFiles.Bytes("4D54726B 00000006 00FF2F00 0000 4D54"),
        ];

        var import = MidiFiles.Read(file);

        Assert.Equal("E4 F4", MidiFiles.Pitches(import));
        Assert.Equal(
            "byte 54: track 1: no end-of-track event\n"
                + "byte 54: track 1: 1 notes never end; they last to its end\n"
                + "byte 66: track 2: 2 bytes behind its end are left out\n"
                + "byte 68: 1 of the tracks announced are missing\n"
                + "byte 68: 2 bytes behind the last track are left out",
            MidiFiles.Warnings(import)
        );
    }

    [Fact]
    public void Names_are_utf8_or_latin1_without_control_signs()
    {
        static string? Title(string hex) =>
            MidiFiles.Read(MidiFiles.Track(hex + "00904050 83604000 ")).Recipe.Title;

        Assert.Equal("Übung", Title("00FF0306C39C62756E67"));
        Assert.Equal("Übung", Title("00FF0306DC62756E6700"));
    }
}
