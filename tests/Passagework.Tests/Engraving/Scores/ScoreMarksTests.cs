using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>What is written at the notes.</summary>
public sealed class ScoreMarksTests
{
    [Fact]
    public void Strokes_stand_where_they_are_not_obvious()
    {
        // First note, then every change of string in five notes a group over strings 6 6 5 5 4 | 6 5 5 4 4 | 5 …
        Assert.Equal([0, 2, 4, 5, 6, 8, 10, 12, 14, 15], Notes(Engraved(Fives), "stroke").Take(10));
        Assert.Equal(
            40,
            Notes(Engraved(Fives, new ScoreOptions { Strokes = ShownStrokes.All }), "stroke").Count
        );
        Assert.Empty(Notes(Engraved(Fives, new ScoreOptions { Strokes = ShownStrokes.None }), "stroke"));
    }

    [Fact]
    public void A_direction_that_is_repeated_is_written()
    {
        var recipe = Fives with { Picking = new PickingPlan { Technique = Technique.AllDown } };

        Assert.Equal(40, Notes(Engraved(recipe), "stroke").Count);
    }

    [Fact]
    public void Groups_have_letters_and_one_hook_each()
    {
        var score = Engraved(Fives);

        Assert.Equal("a b c d e f g h", Texts(score, "group"));
        Assert.Equal(8, Marks(score, "group-hook").Count);
        // A bracket that runs over a line's end goes on in the next without its letter.
        Assert.Equal(9, Marks(score, "group-line").Count);
    }

    // Single notes, each the first of its cell: no groups to see, and an accent on all is an accent on none.
    [Fact]
    public void Groups_of_one_note_have_neither_letters_nor_accents()
    {
        var score = Engraved(Library.Find("straight-up").OrThrow().Recipe);

        Assert.Empty(Marks(score, "group"));
        Assert.Empty(Marks(score, "accent"));
        Assert.Equal(8, Marks(Engraved(Fives), "accent").Count);
    }

    [Fact]
    public void Letters_of_many_groups_go_on_in_pairs()
    {
        var letters = Texts(Engraved(Library.Find("scale-thirds-up-and-down").OrThrow().Recipe), "group")
            .Split(' ');

        Assert.Equal(["y", "z", "aa", "ab"], letters[24..28]);
    }

    [Fact]
    public void Positions_are_told_at_the_start_and_at_every_shift() =>
        Assert.Equal(
            "III V VII IX",
            Texts(Engraved(Library.Find("diagonal-up").OrThrow().Recipe), "position")
        );

    [Fact]
    public void Counts_stand_under_the_first_bar_unless_asked_otherwise()
    {
        Assert.Equal("1 e & a 2 e & a 3 e & a 4 e & a", Texts(Engraved(Fives), "count"));
        Assert.Equal(
            41,
            Marks(Engraved(Fives, new ScoreOptions { Counting = CountedBars.All }), "count").Count
        );
        Assert.Empty(Marks(Engraved(Fives, new ScoreOptions { Counting = CountedBars.None }), "count"));
    }

    [Fact]
    public void Only_beats_are_counted_in_bold()
    {
        var recipe = Fives with { Rhythm = Fives.Rhythm with { NotesPerBeat = 5 } };
        var bold = Marks(Engraved(recipe), "count")
            .OfType<TextMark>()
            .Select(mark => mark.Face == Face.SansBold);

        Assert.Equal([true, false, false, false, false, true], bold.Take(6));
    }

    // Dotted beats in 6/8 to 12/8; 7/8 is felt as it is beamed, 2 + 2 + 3.
    [Theory]
    [InlineData("6/8", "1 4")]
    [InlineData("9/8", "1 4 7")]
    [InlineData("12/8", "1 4 7 10")]
    [InlineData("7/8", "1 3 5")]
    [InlineData("3/8", "1")]
    [InlineData("3/4", "1 2 3")]
    public void Only_felt_beats_are_counted_in_bold(string meter, string expected)
    {
        var beat = MeterOf(meter);
        var perBeat = beat.IsCompound ? 3 : 1;
        var recipe = Fives with { Rhythm = Fives.Rhythm with { NotesPerBeat = perBeat, Meter = beat } };
        var bold = Marks(Engraved(recipe), "count")
            .OfType<TextMark>()
            .Where(mark => mark.Face == Face.SansBold)
            .Select(mark => mark.Text);

        Assert.Equal(expected, string.Join(' ', bold));
        var triplets = recipe with { Rhythm = recipe.Rhythm with { NotesPerBeat = beat.IsCompound ? 6 : 3 } };
        Assert.Equal(
            expected,
            string.Join(
                ' ',
                Marks(Engraved(triplets), "count")
                    .OfType<TextMark>()
                    .Where(mark => mark.Face == Face.SansBold)
                    .Select(mark => mark.Text)
            )
        );
    }

    [Fact]
    public void Syllables_of_another_language_are_written()
    {
        var syllables = new CountSyllables(CountSyllables.Common.ByParts.SetItem(4, ["ti", "und", "ta"]));

        Assert.StartsWith(
            "1 ti und ta 2",
            Texts(Engraved(Fives, new ScoreOptions { Syllables = syllables }), "count"),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_tuplet_that_a_beam_shows_has_a_number_and_no_bracket()
    {
        var score = Engraved(Library.Find("groups-of-three-up").OrThrow().Recipe);

        Assert.Equal(10, Marks(score, "tuplet").Count);
        Assert.Empty(Marks(score, "tuplet-bracket"));
    }

    [Fact]
    public void A_tuplet_with_a_quarter_has_a_bracket()
    {
        var score = Engraved(
            Line("""{ "pitch": "A3", "duration": "1/6" }, { "pitch": "B3", "duration": "1/12" }""")
        );

        Assert.Equal([Glyphs.Tuplet3], Glyph(score, "tuplet"));
        Assert.Equal(4, Marks(score, "tuplet-bracket").Count);
    }

    [Fact]
    public void The_ratio_is_told_where_it_is_not_the_usual()
    {
        var four = Fives with { Rhythm = Fives.Rhythm with { NotesPerBeat = 7, Meter = MeterOf("6/8") } };

        Assert.Equal(
            [Glyphs.Tuplet7, Glyphs.TupletColon, Glyphs.Tuplet6],
            Glyph(Engraved(four), "tuplet").Take(3)
        );
    }

    [Fact]
    public void A_sign_holds_for_its_bar_and_is_recalled_once_in_the_next()
    {
        var score = Engraved(
            Line(
                """
                { "pitch": "C#4", "duration": "1/4" }, { "pitch": "C#4", "duration": "1/4" },
                { "pitch": "C4", "duration": "1/4" }, { "pitch": "C#4", "duration": "1/4" },
                { "pitch": "C4", "duration": "1/2" }, { "pitch": "C4", "duration": "1/2" },
                { "pitch": "C4", "duration": "1" }
                """
            )
        );

        Assert.Equal(
            [
                Glyphs.AccidentalSharp,
                Glyphs.AccidentalNatural,
                Glyphs.AccidentalSharp,
                Glyphs.AccidentalParensLeft,
                Glyphs.AccidentalNatural,
                Glyphs.AccidentalParensRight,
            ],
            Glyph(score, "accidental")
        );
    }

    [Fact]
    public void A_tie_over_a_line_shows_sign_and_number_again()
    {
        const string notes = """{ "pitch": "C#4", "duration": "2" }, { "pitch": "C4", "duration": "1" }""";
        var narrow = Engraved(Line(notes), new ScoreOptions { WidthMm = 40 });
        var wide = Engraved(Line(notes));

        Assert.True(narrow.Systems.Length > 1);
        Assert.Equal("6 6 5", Texts(narrow, "tab-number"));
        Assert.Equal("( )", Texts(narrow, "tab-bracket"));
        Assert.Equal("6 5", Texts(wide, "tab-number"));
        Assert.Empty(Marks(wide, "tab-bracket"));
        Assert.Equal(
            [Glyphs.AccidentalSharp, Glyphs.AccidentalSharp],
            Glyph(narrow, "accidental").Where(glyph => glyph == Glyphs.AccidentalSharp)
        );
        Assert.Single(Glyph(wide, "accidental"), Glyphs.AccidentalSharp);
        Assert.Equal(2, Marks(narrow, "tie").Count);
        Assert.Single(Marks(wide, "tie"));
    }

    [Fact]
    public void Hammers_and_pulls_have_slurs_on_both_staves_and_letters_over_the_tab()
    {
        var score = Engraved(Library.OfFamily("trill")[0].Recipe);

        Assert.StartsWith("H P H P H P H H P", Texts(score, "slur-letter"), StringComparison.Ordinal);
        Assert.Equal(Marks(score, "slur-letter").Count, Marks(score, "tab-slur").Count);
        // One over each chain.
        Assert.Equal(4, Marks(score, "slur").Count);
    }

    [Fact]
    public void Slides_are_lines_that_slant_by_pitch()
    {
        var score = Engraved(Library.Find("diagonal-up").OrThrow().Recipe);
        var slides = Marks(score, "tab-slide").OfType<LineMark>().ToList();

        Assert.Equal(3, slides.Count);
        Assert.All(slides, slide => Assert.True(slide.From.Y > slide.To.Y));
        Assert.Equal(3, Marks(score, "slide").Count);
    }

    [Fact]
    public void Raked_strings_are_crosses_before_the_note()
    {
        var played = Played.Of(Fives);
        var raked = played with { Notes = played.Notes.SetItem(4, played.Notes[4] with { RakedFrom = 6 }) };
        var score = ScoreEngraver.Engrave(raked, new ScoreOptions()).OrThrow();
        var tab = score.Systems[0].Tab ?? default;
        var dead = Marks(score, "dead-note").OfType<TextMark>().ToList();

        // Note 4 is on string 4: strings 6 and 5 are dragged through.
        Assert.Equal(["X", "X"], dead.Select(mark => mark.Text));
        Assert.Equal(
            [tab.BottomMm, tab.BottomMm - (1.5 * 1.75)],
            dead.Select(mark => Round(MiddleY(mark))),
            new Near(0.1)
        );
        Assert.True(dead[0].At.X < dead[1].At.X && dead[1].At.X < score.Systems[0].Columns[4].XMm);
    }

    [Fact]
    public void The_tempo_mark_leads_from_start_to_goal()
    {
        var score = Engraved(Fives, new ScoreOptions { StartBpm = 52, GoalBpm = 72.5 });

        Assert.Equal("= 52 72.5", Texts(score, "tempo"));
        Assert.Equal([Glyphs.MetNoteQuarterUp], Glyph(score, "tempo"));
        Assert.Empty(Marks(Engraved(Fives), "tempo"));
    }

    [Fact]
    public void A_dotted_beat_has_a_dotted_note_in_the_tempo_mark()
    {
        var recipe = Fives with { Rhythm = Fives.Rhythm with { TempoBpm = 60, Meter = MeterOf("6/8") } };

        Assert.Equal([Glyphs.MetNoteQuarterUp, Glyphs.MetAugmentationDot], Glyph(Engraved(recipe), "tempo"));
    }

    [Fact]
    public void Repeats_and_endings_stand_at_their_bars()
    {
        var options = new ScoreOptions
        {
            Repeats = [new ScoreRepeat(1, 2)],
            Endings = [new ScoreEnding(2, 2, "1."), new ScoreEnding(3, 3, "2.")],
        };
        var score = Engraved(Fives, options);

        // Two dots on the staff and two on the tab, at both ends.
        Assert.Equal(8, Marks(score, "repeat-dot").Count);
        Assert.Equal("1. 2.", Texts(score, "ending"));
    }

    [Fact]
    public void A_line_that_begins_late_is_a_pick_up_without_rests()
    {
        var late = Fives with { Rhythm = Fives.Rhythm with { StartOffset = Fraction.Of(3, 4) } };
        var early = Fives with { Rhythm = Fives.Rhythm with { StartOffset = Fraction.Of(1, 4) } };

        Assert.Equal(0, Engraved(late).Systems[0].FirstBar);
        Assert.NotEmpty(Engraved(late).Systems[0].Columns[0].Heads);
        Assert.StartsWith("4 e & a 1 e & a", Texts(Engraved(late), "count"), StringComparison.Ordinal);
        Assert.Equal(1, Engraved(early).Systems[0].FirstBar);
        Assert.Empty(Engraved(early).Systems[0].Columns[0].Heads);
        Assert.Empty(Engraved(late, new ScoreOptions { PickUp = false }).Systems[0].Columns[0].Heads);
    }

    [Fact]
    public void Each_system_but_the_first_has_the_number_of_its_bar()
    {
        Assert.Equal("2", Texts(Engraved(Fives), "bar-number"));
        Assert.Empty(Marks(Engraved(Fives, new ScoreOptions { BarNumbers = false }), "bar-number"));
    }

    [Fact]
    public void Chord_symbols_have_real_signs()
    {
        var options = new ScoreOptions { Chords = [new ScoreChord(Fraction.Zero, ChordOf("Bbm7b5/F#"))] };

        Assert.Equal("B♭m7♭5/F♯", Texts(Engraved(Fives, options), "chord"));
    }

    [Fact]
    public void The_bass_is_read_in_its_own_clef()
    {
        Assert.True(Passagework.Instrument.Tuning.TryParse("bass", out var bass));
        var recipe = KeyChange.ToTuning(Fives, bass).OrThrow();

        Assert.Equal(Glyphs.FClef8vb, Glyph(Engraved(recipe), "clef").First());
        Assert.Equal(Glyphs.GClef8vb, Glyph(Engraved(Fives), "clef").First());
    }

    private static Recipe Fives { get; } = Library.Find("groups-of-five-up").OrThrow().Recipe;

    private static Recipe Line(string entries) =>
        RecipeJson
            .Read(
                $$"""{ "passagework": 1, "title": "Line", "notes": { "root": "A", "scale": "natural minor" }, "written": [{{entries}}] }"""
            )
            .OrThrow();

    private static Passagework.Theory.Chord ChordOf(string text) =>
        Passagework.Theory.Chord.TryParse(text, out var chord)
            ? chord
            : throw new InvalidOperationException(text);

    private static Meter MeterOf(string text) => Meter.TryParse(text, out var meter) ? meter : default;

    private static Score Engraved(Recipe recipe, ScoreOptions? options = null)
    {
        var played = Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();
        return ScoreEngraver.Engrave(played, options ?? new ScoreOptions()).OrThrow();
    }

    private static List<Mark> Marks(Score score, string kind) =>
        [.. score.Systems.SelectMany(system => system.Marks).Where(mark => mark.Kind == kind)];

    private static List<int?> Notes(Score score, string kind) =>
        [.. Marks(score, kind).Select(mark => mark.Note)];

    private static string Texts(Score score, string kind) =>
        string.Join(' ', Marks(score, kind).OfType<TextMark>().Select(mark => mark.Text));

    private static IEnumerable<int> Glyph(Score score, string kind) =>
        Marks(score, kind).OfType<GlyphMark>().Select(mark => mark.CodePoint);

    private static double MiddleY(Mark mark)
    {
        var box = MarkBox.Of(mark);
        return (box.Top + box.Bottom) / 2;
    }

    private static double Round(double value) => Math.Round(value, 3);

    private sealed class Near(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
