using System.Diagnostics;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Architecture;
using Passagework.Tests.Notation;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Sizes on paper, large and odd input, and what is refused.</summary>
public sealed class ScoreBoundsTests
{
    private const double PointMm = 25.4 / 72;

    // 9 pt: figures 2.22 mm high, text with an em of 9 pt; fingers at least as high as figures of 7 pt. Assumed by us.
    [Theory]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(7.9)]
    public void Nothing_is_too_small_to_read(double staffMm)
    {
        var marks = Marks(Engraved(Fives, new ScoreOptions { StaffMm = staffMm }));

        Assert.All(Texts(marks, "tab-number"), mark => Assert.True(MarkBox.Of(mark).Height >= 2.2));
        Assert.All(marks.OfType<TextMark>(), mark => Assert.True(mark.SizeMm >= (9 * PointMm) - 1e-9));
        Assert.All(
            marks.Where(mark => mark.Kind == "finger"),
            mark => Assert.True(MarkBox.Of(mark).Height >= 1.5)
        );
    }

    // Worked sizes of a staff of 7 mm: figures 1.3 spaces high, tab lines a space and a half apart, tab at least six
    // spaces under the staff: 4 + 6 + 7.5 spaces are 30.6 mm.
    [Fact]
    public void Staff_and_tab_have_their_measures()
    {
        var bare = new ScoreOptions
        {
            Fingers = false,
            Strokes = ShownStrokes.None,
            Groups = false,
        };
        var recipe = Library.Find("straight-up").OrThrow().Recipe;
        var system = Engraved(recipe, bare).Systems[^1];
        var (staff, tab) = (system.Staff ?? default, system.Tab ?? default);
        var digit = MarkBox.Of(Texts([.. system.Marks], "tab-number")[0]);

        Assert.Equal(7.0, staff.BottomMm - staff.TopMm, 1e-9);
        Assert.Equal(13.125, tab.BottomMm - tab.TopMm, 1e-9);
        Assert.Equal(30.6, tab.BottomMm - staff.TopMm, 0.05);
        Assert.Equal(2.28, digit.Height, 0.05);
    }

    [Fact]
    public void Every_sign_that_is_drawn_exists_in_the_font()
    {
        var used = Library
            .All.Take(20)
            .SelectMany(exercise => Marks(Engraved(exercise.Recipe)))
            .OfType<GlyphMark>();

        Assert.All(
            used.Select(mark => mark.CodePoint).Distinct(),
            glyph => Assert.True(MusicFont.Has(glyph))
        );
    }

    [Theory]
    [InlineData("1/64")]
    [InlineData("1/128")]
    [InlineData("1/1024")]
    public void Bars_of_the_shortest_notes_keep_every_rule(string length)
    {
        Assert.True(Fraction.TryParse(length, out var each));
        var entries = Enumerable
            .Repeat("6:5 8 5:5 7", 40)
            .SelectMany(places => PlayedLines.Entries(places, each));
        var played = PlayedLines.Of(PlayedLines.Plain, entries).Spelled();
        var options = new ScoreOptions();

        Offenders.AreNone(
            ScoreRules.Broken(ScoreEngraver.Engrave(played, options).OrThrow(), played, options)
        );
    }

    [Fact]
    public void One_note_is_a_score()
    {
        var played = PlayedLines
            .Of(PlayedLines.Plain, PlayedLines.Entries("1:24", Fraction.Of(1, 4)))
            .Spelled();
        var score = ScoreEngraver.Engrave(played, new ScoreOptions()).OrThrow();

        Assert.Equal(["24"], Texts(Marks(score), "tab-number").Select(mark => mark.Text));
    }

    [Fact]
    public void Five_thousand_notes_are_engraved_in_linear_time()
    {
        var (half, whole) = (Many(2500), Many(5000));
        ScoreEngraver.Engrave(half, new ScoreOptions());
        var watch = Stopwatch.StartNew();
        ScoreEngraver.Engrave(half, new ScoreOptions()).OrThrow();
        var first = watch.Elapsed;
        watch.Restart();
        var score = ScoreEngraver.Engrave(whole, new ScoreOptions()).OrThrow();
        var second = watch.Elapsed;

        Assert.Equal(
            5000,
            score.Systems.Sum(system => system.Columns.Count(column => !column.Heads.IsEmpty))
        );
        // Twice the notes, twice the time; four times leaves room for a busy machine and still fails what is quadratic
        // only together with the bound on the whole.
        Assert.True(
            second < (4 * first) + TimeSpan.FromMilliseconds(200),
            $"{first} for half, {second} for all"
        );
        Assert.True(second < TimeSpan.FromSeconds(10), $"{second}");
    }

    [Fact]
    public void The_same_exercise_gives_the_same_marks()
    {
        var (first, second) = (Marks(Engraved(Fives)), Marks(Engraved(Fives)));

        Assert.True(first.SequenceEqual(second));
    }

    [Theory]
    [InlineData("the width of the score: 20 mm; from 30 to 2000 mm", 20.0, 7.0)]
    [InlineData("the height of the staff: 3 mm; from 4 to 20 mm", 180.0, 3.0)]
    [InlineData("the width of the score: NaN mm; from 30 to 2000 mm", double.NaN, 7.0)]
    [InlineData(
        "the width of the score: the line is too narrow for a single note; a wider line or a smaller staff",
        30.0,
        20.0
    )]
    public void Sizes_out_of_range_are_refused(string expected, double widthMm, double staffMm) =>
        Assert.Equal(expected, Refused(new ScoreOptions { WidthMm = widthMm, StaffMm = staffMm }));

    [Fact]
    public void A_tempo_out_of_range_is_refused() =>
        Assert.Equal(
            "the tempo aimed for: 0 beats a minute; from 1 to 1000 beats a minute",
            Refused(new ScoreOptions { GoalBpm = 0 })
        );

    [Theory]
    [InlineData(0, 2)]
    [InlineData(2, 9)]
    [InlineData(3, 2)]
    public void Repeats_outside_the_piece_are_refused(int first, int last) =>
        Assert.Equal(
            $"a repeat from bar {first} to bar {last}; bars from 1 to 3, in order",
            Refused(new ScoreOptions { Repeats = [new ScoreRepeat(first, last)] })
        );

    [Fact]
    public void Words_without_glyphs_are_refused() =>
        Assert.StartsWith(
            "words above the music, ",
            Refused(new ScoreOptions { Words = [new ScoreWords(Fraction.Zero, "音階")] }),
            StringComparison.Ordinal
        );

    [Fact]
    public void Words_too_long_for_a_line_are_refused() =>
        Assert.Equal(
            "words above the music: a text of 201 letters; at most 200",
            Refused(new ScoreOptions { Words = [new ScoreWords(Fraction.Zero, new string('a', 201))] })
        );

    [Fact]
    public void A_head_longer_than_two_whole_notes_is_refused()
    {
        Assert.True(Meter.TryParse("16/2", out var meter));
        var recipe = PlayedLines.Plain with { Rhythm = new RhythmPlan { Meter = meter } };
        var played = PlayedLines.Of(recipe, PlayedLines.Entries("6:5", Fraction.Of(8))).Spelled();

        Assert.Equal(
            "bar 1: a note value of 8 whole notes; at most two whole notes in one head, so a metre with shorter bars",
            ScoreEngraver.Engrave(played, new ScoreOptions()) is Outcome<Score>.Refused refused
                ? refused.Fault.ToString()
                : "engraved"
        );
    }

    private static Recipe Fives { get; } = Library.Find("groups-of-five-up").OrThrow().Recipe;

    private static Realization Many(int notes) =>
        PlayedLines
            .Of(
                PlayedLines.Plain,
                Enumerable
                    .Range(0, notes)
                    .SelectMany(i => PlayedLines.Entries($"{(i % 6) + 1}:{5 + (i % 4)}", Fraction.Of(1, 16)))
                    .Select(
                        (entry, i) =>
                            entry with
                            {
                                Finger = (i % 4) + 1,
                                Stroke = i % 2 == 0 ? Stroke.Down : Stroke.Up,
                                Group = i / 5,
                            }
                    )
            )
            .Spelled();

    private static Score Engraved(Recipe recipe, ScoreOptions? options = null) =>
        ScoreEngraver.Engrave(Played(recipe), options ?? new ScoreOptions()).OrThrow();

    private static Realization Played(Recipe recipe) =>
        Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();

    private static string Refused(ScoreOptions options) =>
        ScoreEngraver.Engrave(Played(Fives), options) is Outcome<Score>.Refused refused
            ? refused.Fault.ToString()
            : "engraved";

    private static List<Mark> Marks(Score score) => [.. score.Systems.SelectMany(system => system.Marks)];

    private static List<TextMark> Texts(List<Mark> marks, string kind) =>
        [.. marks.OfType<TextMark>().Where(mark => mark.Kind == kind)];
}
