using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Bends and vibrato.</summary>
public sealed class ScoreBendTests
{
    // Sizes stand in whole steps (common practice of tab).
    [Theory]
    [InlineData("¼", 1, 2)]
    [InlineData("½", 1, 1)]
    [InlineData("¾", 3, 2)]
    [InlineData("1", 2, 1)]
    [InlineData("1¼", 5, 2)]
    [InlineData("1½", 3, 1)]
    [InlineData("1¾", 7, 2)]
    [InlineData("2", 4, 1)]
    public void A_bend_is_told_in_whole_steps(string expected, int numerator, int denominator)
    {
        var score = Engraved(
            new ScoreOptions { Bends = [new ScoreBend(2, Fraction.Of(numerator, denominator))] }
        );

        Assert.Equal([expected], Marks(score, "bend-figure").Cast<TextMark>().Select(mark => mark.Text));
        Assert.Null(TextFont.Missing(expected, Face.Sans));
    }

    // Note 4 is on string 4 (worked by hand: strings 6 6 5 5 4).
    [Fact]
    public void An_arrow_leads_from_the_number_over_the_whole_tab()
    {
        var score = Engraved(new ScoreOptions { Bends = [new ScoreBend(4, Fraction.Of(2))] });
        var tab = score.Systems[0].Tab ?? default;
        var number = MarkBox.Of(Marks(score, "tab-number").Single(mark => mark.Note == 4));
        var rise = Assert.IsType<CurveMark>(Marks(score, "tab-bend")[0]);
        var head = Assert.IsType<PolygonMark>(Marks(score, "tab-bend")[1]);
        var figure = MarkBox.Of(Marks(score, "bend-figure").Single());

        Assert.Equal(2, Marks(score, "tab-bend").Count);
        Assert.Equal(tab.TopMm + (3 * (tab.BottomMm - tab.TopMm) / 5), rise.From.Y, 1e-9);
        Assert.InRange(rise.From.X, number.Right, number.Right + score.SpaceMm);
        // The tip is the first corner, over its shaft and over the first line, under the figure.
        Assert.Equal(rise.To.X, head.Corners[0].X, 1e-9);
        Assert.True(head.Corners[0].Y < head.Corners[1].Y);
        Assert.InRange(head.Corners[0].Y, figure.Bottom, tab.TopMm - score.SpaceMm);
    }

    [Fact]
    public void A_release_comes_down_to_the_string_again()
    {
        var score = Engraved(new ScoreOptions { Bends = [new ScoreBend(4, Fraction.Of(2), Release: true)] });
        var tab = score.Systems[0].Tab ?? default;
        var parts = Marks(score, "tab-bend");
        var fall = Assert.IsType<CurveMark>(parts[2]);
        var head = Assert.IsType<PolygonMark>(parts[3]);
        var line = tab.TopMm + (3 * (tab.BottomMm - tab.TopMm) / 5);
        var next = MarkBox.Of(Marks(score, "tab-number").Single(mark => mark.Note == 5));

        Assert.Equal(4, parts.Count);
        Assert.True(fall.From.Y < fall.To.Y);
        Assert.InRange(line - head.Corners[0].Y, 0.2, score.SpaceMm);
        Assert.True(head.Corners[0].Y > head.Corners[1].Y);
        Assert.True(MarkBox.Of(head).Right < next.Left);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void On_the_staff_a_line_rises_and_stays_or_comes_down(bool release)
    {
        var score = Engraved(new ScoreOptions { Bends = [new ScoreBend(4, Fraction.Of(2), release)] });
        var parts = Marks(score, "bend").Cast<CurveMark>().ToList();
        var (up, on) = (parts[0], parts[1]);

        Assert.Equal(2, parts.Count);
        Assert.True(up.To.Y < up.From.Y);
        Assert.Equal(up.To, on.From);
        Assert.Equal(release ? up.From.Y : up.To.Y, on.To.Y, 1e-9);
    }

    [Fact]
    public void A_staff_alone_has_the_figure_over_it()
    {
        var score = Engraved(
            new ScoreOptions { Layout = ScoreLayout.Staff, Bends = [new ScoreBend(4, Fraction.Of(3))] }
        );
        var figure = Assert.IsType<TextMark>(Marks(score, "bend-figure").Single());

        Assert.Equal("1½", figure.Text);
        Assert.True(MarkBox.Of(figure).Bottom < score.Systems[0].Staff?.TopMm);
        Assert.Empty(Marks(score, "tab-bend"));
    }

    // The repeat of the stroke is 0.608 spaces (SMuFL metadata of the font).
    [Fact]
    public void Vibrato_lasts_until_the_next_note()
    {
        var score = Engraved(new ScoreOptions { Vibratos = [4] });
        var waves = Marks(score, "vibrato").Cast<GlyphMark>().ToList();
        var columns = score.Systems[0].Columns;
        var tab = score.Systems[0].Tab ?? default;

        Assert.All(waves, wave => Assert.Equal(Glyphs.GuitarVibratoStroke, wave.CodePoint));
        Assert.All(waves, wave => Assert.True(MarkBox.Of(wave).Bottom < tab.TopMm));
        Assert.True(waves.Count >= 3);
        Assert.All(
            waves.Zip(waves.Skip(1)),
            pair => Assert.Equal(0.608 * score.SpaceMm, pair.Second.At.X - pair.First.At.X, 1e-6)
        );
        Assert.InRange(waves[0].At.X, columns[4].XMm - (0.7 * score.SpaceMm), columns[4].XMm);
        var left = columns[5].XMm - MarkBox.Of(waves[^1]).Right;
        Assert.InRange(left, 0.5 * score.SpaceMm, 1.7 * score.SpaceMm);
    }

    [Theory]
    [InlineData("a bend at note 40; a note from 0 to 39", 40, 2, 1)]
    [InlineData("a bend at note -1; a note from 0 to 39", -1, 2, 1)]
    [InlineData("note 3: a bend of 0 half-steps; 1/2, 1, 3/2 and so on to 4", 3, 0, 1)]
    [InlineData("note 3: a bend of 9/2 half-steps; 1/2, 1, 3/2 and so on to 4", 3, 9, 2)]
    [InlineData("note 3: a bend of 1/3 half-steps; 1/2, 1, 3/2 and so on to 4", 3, 1, 3)]
    [InlineData("note 3: a bend of -1 half-steps; 1/2, 1, 3/2 and so on to 4", 3, -1, 1)]
    public void A_bend_that_cannot_be_is_refused(string expected, int note, int numerator, int denominator) =>
        Assert.Equal(
            expected,
            Refused(new ScoreOptions { Bends = [new ScoreBend(note, Fraction.Of(numerator, denominator))] })
        );

    [Fact]
    public void Vibrato_of_no_note_and_two_bends_of_one_are_refused()
    {
        Assert.Equal(
            "vibrato at note 40; a note from 0 to 39",
            Refused(new ScoreOptions { Vibratos = [0, 40] })
        );
        Assert.Equal(
            "note 2: 2 bends; one",
            Refused(
                new ScoreOptions
                {
                    Bends = [new ScoreBend(2, Fraction.One), new ScoreBend(2, Fraction.Of(2))],
                }
            )
        );
    }

    // Bar 2 of the sixteenths begins with note 16; a sheet that prints some bars shifts what belongs to notes.
    [Fact]
    public void Bars_cut_out_for_a_sheet_keep_their_bends()
    {
        var options = new ScoreOptions
        {
            Bends = [new ScoreBend(3, Fraction.One), new ScoreBend(18, Fraction.Of(2))],
            Vibratos = [2, 20],
        };
        var marks = new ScoreSystems(Played.Of("groups-of-five-up"), options)
            .Of(new BarSpan(1, 2), 7)
            .OrThrow()
            .SelectMany(figure => figure.Marks)
            .ToList();

        Assert.Equal([18], marks.Where(mark => mark.Kind == "bend-figure").Select(mark => mark.Note));
        Assert.Equal([20], marks.Where(mark => mark.Kind == "vibrato").Select(mark => mark.Note).Distinct());
    }

    private static Score Engraved(ScoreOptions options) =>
        ScoreEngraver.Engrave(Played.Of("groups-of-five-up"), options).OrThrow();

    private static string Refused(ScoreOptions options) =>
        ScoreEngraver.Engrave(Played.Of("groups-of-five-up"), options) is Outcome<Score>.Refused refused
            ? refused.Fault.ToString()
            : "engraved";

    private static List<Mark> Marks(Score score, string kind) =>
        [.. score.Systems.SelectMany(system => system.Marks).Where(mark => mark.Kind == kind)];
}
