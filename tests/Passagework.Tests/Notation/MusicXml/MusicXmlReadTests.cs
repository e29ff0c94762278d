using Passagework.Exercises;
using Passagework.Notation;
using static Passagework.Tests.Notation.Scores;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Notation;

public sealed class MusicXmlReadTests
{
    // The strings of the reference tuning: bottom line 1 is E2, string 1 is E4 (MusicXML 4.0, staff-tuning and string).
    private const string Tab =
        "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time>"
        + "<clef><sign>TAB</sign></clef><staff-details><staff-lines>6</staff-lines>"
        + "<staff-tuning line=\"1\"><tuning-step>E</tuning-step><tuning-octave>2</tuning-octave></staff-tuning>"
        + "<staff-tuning line=\"2\"><tuning-step>A</tuning-step><tuning-octave>2</tuning-octave></staff-tuning>"
        + "<staff-tuning line=\"3\"><tuning-step>D</tuning-step><tuning-octave>3</tuning-octave></staff-tuning>"
        + "<staff-tuning line=\"4\"><tuning-step>G</tuning-step><tuning-octave>3</tuning-octave></staff-tuning>"
        + "<staff-tuning line=\"5\"><tuning-step>B</tuning-step><tuning-octave>3</tuning-octave></staff-tuning>"
        + "<staff-tuning line=\"6\"><tuning-step>E</tuning-step><tuning-octave>4</tuning-octave></staff-tuning>";

    [Fact]
    public void Pitches_stand_as_sounding_where_nothing_is_transposed() =>
        Assert.Equal(
            "E2 1/4, F#3 1/8, r 1/8, A3 1/2",
            Entries(Read(Of(FourFour + Note("E2", 4) + Note("F#3", 2) + Rest(2) + Note("A3", 8))))
        );

    // Way B of writing guitar music: written an octave up, with a transposition (MusicXML 4.0, transpose).
    [Fact]
    public void A_transposing_part_sounds_where_it_says()
    {
        const string OctaveDown =
            "<attributes><transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose></attributes>";
        const string InBFlat =
            "<attributes><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";

        Assert.Equal("E2 1", Entries(Read(Of(FourFour + OctaveDown + Note("E3", 16)))));
        Assert.Equal("E3 1", Entries(Read(Of(FourFour + InBFlat + Note("F#3", 16)))));
    }

    // The clef's own octave says how it looks, never how it sounds: the pitches are sounding ones already.
    [Fact]
    public void An_octave_clef_changes_nothing()
    {
        const string Clef =
            "<attributes><clef><sign>G</sign><line>2</line><clef-octave-change>-1</clef-octave-change></clef></attributes>";

        Assert.Equal("E2 1", Entries(Read(Of(FourFour + Clef + Note("E2", 16)))));
    }

    [Fact]
    public void Strings_and_frets_are_places()
    {
        var read = Read(Of(Tab + "</staff-details></attributes>" + Placed("A2", 6, 5) + Placed("C5", 1, 8)));

        Assert.Equal("6:5 1/2, 1:8 1/2", Entries(read));
        Assert.Equal("standard", read.Recipe.Instrument.Tuning.Text);
        Assert.Empty(read.LeftOut);
    }

    // pitch = tuning + capo + fret; frets count from the capo.
    [Fact]
    public void A_capo_raises_the_strings_and_frets_count_from_it()
    {
        var read = Read(
            Of(Tab + "<capo>2</capo></staff-details></attributes>" + Placed("F#2", 6, 0) + Placed("A2", 6, 3))
        );

        Assert.Equal("6:0 1/2, 6:3 1/2", Entries(read));
        Assert.Equal(2, read.Recipe.Instrument.Capo);
    }

    [Fact]
    public void Frets_from_the_nut_are_read_from_the_capo_with_a_remark()
    {
        var read = Read(
            Of(Tab + "<capo>2</capo></staff-details></attributes>" + Placed("F#2", 6, 2) + Placed("A2", 6, 5))
        );

        Assert.Equal("6:0 1/2, 6:3 1/2", Entries(read));
        Assert.Equal(["bar 1, beat 1: frets counted from the nut, not from the capo (2 times)"], Texts(read));
    }

    [Fact]
    public void A_place_that_does_not_sound_the_pitch_is_left_to_the_programme()
    {
        var read = Read(Of(Tab + "</staff-details></attributes>" + Placed("A2", 6, 7) + Placed("A3", 6, 5)));

        Assert.Equal("A2 1/2, 6:5 1/2", Entries(read));
        Assert.Equal(
            [
                "bar 1, beat 1: string and fret do not sound the pitch; the pitch kept",
                "bar 1, beat 3: string and fret sound octaves away from the pitch; string and fret kept",
            ],
            Texts(read)
        );
    }

    [Fact]
    public void A_lone_string_number_fingers_and_strokes_are_locks()
    {
        var read = Read(
            Of(
                FourFour
                    + Note("A2", 4, Technical("<string>6</string><fingering>1</fingering><down-bow/>"))
                    + Note("C3", 4, Technical("<up-bow/>"))
                    + Note("D3", 4, Technical("<pluck>m</pluck><fingering>T</fingering>"))
                    + Note("E3", 4)
            )
        );

        Assert.Equal(
            [
                new Lock(0, Finger: 1, String: 6, Stroke: Stroke.Down),
                new Lock(1, Stroke: Stroke.Up),
                new Lock(2, Stroke: Stroke.Middle),
            ],
            read.Recipe.Fretting.Locks
        );
        Assert.Equal(Technique.Hybrid, read.Recipe.Picking.Technique);
        Assert.Equal(["bar 1, beat 3: finger 'T' left out"], Texts(read));
    }

    [Fact]
    public void Hammers_pulls_slides_and_accents_belong_to_the_note_they_lead_to()
    {
        var read = Read(
            Of(
                FourFour
                    + Note(
                        "A2",
                        4,
                        Technical("<hammer-on type=\"start\"/>", "<articulations><accent/></articulations>")
                    )
                    + Note("C3", 4, Technical("<hammer-on type=\"stop\"/><pull-off type=\"start\"/>"))
                    + Note("A2", 4, Technical("<pull-off type=\"stop\"/>", "<slide type=\"start\"/>"))
                    + Note("B2", 4, "<notations><slide type=\"stop\"/></notations>")
            )
        );

        Assert.Equal(
            [(Slur.None, true), (Slur.Hammer, false), (Slur.Pull, false), (Slur.Slide, false)],
            read.Recipe.Written!.Entries.Select(entry => (entry.Slur, entry.Accent)) // an import is always written
        );
    }

    [Fact]
    public void Ties_join_and_tuplets_are_exact() =>
        Assert.Equal(
            "A2 5/4, C3 1/12, D3 1/12, E3 1/12, F3 1/2",
            Entries(
                Read(
                    Of(
                        FourFour
                            + "<attributes><divisions>12</divisions></attributes>"
                            + Note("A2", 48, "<tie type=\"start\"/>"),
                        Note("A2", 12, "<tie type=\"stop\"/>")
                            + Note("C3", 4)
                            + Note("D3", 4)
                            + Note("E3", 4)
                            + Note("F3", 24)
                    )
                )
            )
        );

    [Fact]
    public void A_short_first_bar_is_a_pick_up()
    {
        var read = Read(Of(FourFour + Note("A2", 2), Note("C3", 16)));

        Assert.Equal("7/8", read.Recipe.Rhythm.StartOffset.ToString());
        Assert.Equal("A2 1/8, C3 1", Entries(read));
    }

    [Fact]
    public void A_chord_is_gathered_under_its_top_note()
    {
        var score = Of(
            FourFour
                + Note("E2", 8)
                + Note("B2", 8, before: "<chord/>")
                + Note("G3", 8, before: "<grace/>")
                    .Replace("<duration>8</duration>", "", StringComparison.Ordinal)
                + Note("A2", 8)
        );

        Assert.Equal("B2+E2 1/2, A2 1/2", Entries(Read(score)));
        Assert.Equal(["bar 1, beat 3: grace note left out"], Texts(Read(score)));
        var melody = Read(score, new MusicXmlReading { TopNotesOnly = true });
        Assert.Equal("B2 1/2, A2 1/2", Entries(melody));
        Assert.Equal(
            ["bar 1, beat 3: grace note left out", "bar 1, beat 1: chord, only its top note kept"],
            Texts(melody)
        );
    }

    [Fact]
    public void A_tied_chord_holds_on()
    {
        const string Start = "<tie type=\"start\"/>";
        const string Stop = "<tie type=\"stop\"/>";

        Assert.Equal(
            "B2+E2 3/4, A2 1/4",
            Entries(
                Read(
                    Of(
                        FourFour
                            + Note("E2", 8, Start)
                            + Note("B2", 8, Start, "<chord/>")
                            + Note("E2", 4, Stop)
                            + Note("B2", 4, Stop, "<chord/>")
                            + Note("A2", 4)
                    )
                )
            )
        );
    }

    [Theory]
    [InlineData("3/4", null, "<sound tempo=\"90\"/>", 90.0)]
    [InlineData("6/8", null, "<sound tempo=\"90\"/>", 60.0)]
    [InlineData("4/4", "<beat-unit>eighth</beat-unit>", "", 40.0)]
    [InlineData("6/8", "<beat-unit>quarter</beat-unit><beat-unit-dot/>", "", 80.0)]
    public void The_tempo_counts_felt_beats(string meter, string? unit, string sound, double bpm)
    {
        var mark = unit is null
            ? ""
            : $"<direction-type><metronome>{unit}<per-minute>80</per-minute></metronome></direction-type>";
        var time =
            $"<attributes><divisions>4</divisions><time><beats>{meter[0]}</beats><beat-type>{meter[2]}</beat-type></time></attributes>";

        Assert.Equal(
            bpm,
            Read(Of(time + $"<direction>{mark}{sound}</direction>" + Note("A2", 4))).Recipe.Rhythm.TempoBpm
        );
    }

    [Fact]
    public void Swing_is_the_share_of_the_first()
    {
        var read = Read(
            Of(
                FourFour
                    + "<sound><swing><first>2</first><second>1</second><swing-type>16th</swing-type></swing></sound>"
                    + Note("A2", 4)
            )
        );

        Assert.Equal("2/3", read.Recipe.Rhythm.Swing.Share.ToString());
        Assert.Equal(4, read.Recipe.Rhythm.NotesPerBeat);
    }

    // Found in a tune from elsewhere: thirds of semitones have endless decimals.
    [Fact]
    public void Parts_of_semitones_are_left_out_however_fine()
    {
        var third = Note("C3", 8)
            .Replace("</step>", "</step><alter>0.3333333333333333</alter>", StringComparison.Ordinal);
        var comma = Note("D3", 8).Replace("</step>", "</step><alter>-1.41</alter>", StringComparison.Ordinal);

        var read = Read(Of(FourFour + third + comma));

        Assert.Equal("C3 1/2, Db3 1/2", Entries(read));
        Assert.Contains(
            "part of a semitone left out (2 times)",
            Assert.Single(read.LeftOut).ToString(),
            StringComparison.Ordinal
        );
    }

    // Three flats and minor: C minor. Two semitones up for a capo there, so the shape is Bb minor.
    [Fact]
    public void The_key_names_root_and_scale()
    {
        const string Key = "<attributes><key><fifths>-3</fifths><mode>minor</mode></key></attributes>";

        var plain = Read(Of(FourFour + Key + Note("C3", 16))).Recipe.Notes;
        var capo = Read(
            Of(Tab + "<capo>2</capo></staff-details></attributes>" + Key + Note("C3", 16))
        ).Recipe.Notes;

        Assert.Equal("C natural minor", $"{plain?.Root} {plain?.Scale}");
        Assert.Equal("Bb natural minor", $"{capo?.Root} {capo?.Scale}");
    }

    [Fact]
    public void What_a_line_does_not_hold_is_listed_once_each()
    {
        var read = Read(
            Of(
                FourFour
                    + "<direction><direction-type><words>Dolce</words></direction-type></direction>"
                    + "<harmony><root><root-step>A</root-step></root><kind>minor</kind></harmony>"
                    + Note("A2", 8, Technical("<bend><bend-alter>2</bend-alter></bend>"))
                    + Note("A2", 8, "<lyric><text>la</text></lyric>"),
                "<attributes><time><beats>3</beats><beat-type>4</beat-type></time></attributes>"
                    + Note("A2", 8, Technical("<bend><bend-alter>2</bend-alter></bend>"))
            )
        );

        Assert.Equal(
            [
                "bar 1, beat 1: text 'Dolce' left out",
                "bar 1, beat 1: chord symbol left out",
                "bar 1, beat 1: 'bend' left out (2 times)",
                "bar 1, beat 3: lyrics left out",
                "bar 2, beat 1: change of metre to 3/4; the line keeps 4/4 and its exact times",
                "bar 2, beat 1: bar shorter than its metre",
            ],
            Texts(read)
        );
    }

    private static string[] Texts(MusicXmlImport read) =>
        [.. read.LeftOut.Select(remark => remark.ToString())];

    private static string Placed(string pitch, int number, int fret) =>
        Note(pitch, 8, Technical($"<string>{number}</string><fret>{fret}</fret>"));

    private static string Technical(string signs, string more = "") =>
        $"<notations><technical>{signs}</technical>{more}</notations>";
}
