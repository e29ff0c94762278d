using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving.Sheets;

/// <summary>How a sheet uses its page: little music is larger, much music keeps a log that can be written in.</summary>
public sealed class SheetRoomTests
{
    // The box ends 264 mm from the top.
    [Fact]
    public void No_sheet_leaves_its_page_empty()
    {
        var empty = Played
            .All.Select(exercise => (exercise.Id, Left: 264 - LowestInk(Sheet(exercise.Id))))
            .Where(sheet => sheet.Left > 25);

        Assert.Empty(empty);
    }

    // 6.6 mm is the least for a pencil, ruled paper has 7 to 8; the columns stand 15, 49 and 83 mm from the left.
    [Fact]
    public void Every_log_is_as_wide_as_the_page_with_named_rows()
    {
        foreach (var (id, _) in Played.All)
        {
            var marks = Sheet(id).Marks;
            var rules = marks
                .OfType<LineMark>()
                .Where(mark => mark.Id.StartsWith("log-rule", StringComparison.Ordinal))
                .ToList();
            var days = marks
                .OfType<TextMark>()
                .Where(mark => mark.Kind == "log-day")
                .Select(mark => mark.Text)
                .ToList();

            Assert.Equal(180, rules[0].To.X - rules[0].From.X, 6);
            Assert.InRange(rules[1].From.Y - rules[0].From.Y, 6.6 - 1e-9, 9.4 + 1e-9);
            Assert.Contains(string.Join(' ', days), new[] { "Mon Tue Wed Thu Fri Sat Sun", "1 2 3 4 5" });
        }
    }

    [Fact]
    public void Little_music_has_the_large_staff_and_a_variation()
    {
        var sheet = Sheet("straight-up");
        var first = sheet.Marks.OfType<GlyphMark>().First(mark => mark.Id == "varied-turn-0-note-0-stroke");

        Assert.Equal(7.9, StaffMm(sheet), 6);
        Assert.Equal(Glyphs.StringsUpBow, first.CodePoint);
        Assert.Equal(
            "When this is easy: the same, begun with an up-stroke.",
            string.Join(
                ' ',
                sheet
                    .Marks.OfType<TextMark>()
                    .Where(mark => mark.Kind == "varied-go-on")
                    .Select(mark => mark.Text)
            )
        );
        Assert.Empty(sheet.Remarks);
    }

    [Theory]
    [InlineData("groups-of-five-up-and-down", 7.0)]
    [InlineData("pedal-up-and-down", 6.5)]
    public void More_music_has_the_usual_staff_and_much_a_small_one(string id, double staffMm) =>
        Assert.Equal(staffMm, StaffMm(Sheet(id)), 6);

    // Sixteen bars of two half notes stand in a few systems; of sixteenths only the first systems fit.
    [Theory]
    [InlineData(2, "", 32)]
    [InlineData(8, "This is bars 1 to 10 of 16; the rest is not printed here.", 80)]
    [InlineData(16, "This is bars 1 to 4 of 16; the rest is not printed here.", 64)]
    public void A_line_without_a_turn_prints_as_many_whole_systems_as_fit(
        int notesPerBar,
        string sentence,
        int printed
    )
    {
        var entry = new WrittenEntry { Place = Place.At(4, 5), Duration = Fraction.Of(1, notesPerBar) };
        var recipe = new Recipe
        {
            Title = "Sixteen bars",
            Written = new WrittenLine([.. Enumerable.Repeat(entry, 16 * notesPerBar)]),
        };
        var sheet = SheetMaker
            .Make(
                Played.Of(recipe),
                SheetDefaults.Of(Played.Measured(recipe)) with
                {
                    Variation = null,
                },
                new SheetOptions()
            )
            .OrThrow();

        Assert.Equal(
            sentence,
            string.Join(
                ' ',
                sheet.Marks.OfType<TextMark>().Where(mark => mark.Kind == "go-on").Select(mark => mark.Text)
            )
        );
        Assert.Equal(printed, sheet.Marks.Count(mark => mark.Kind == "tab-number"));
    }

    [Theory]
    [InlineData(
        Technique.Alternate,
        FirstStroke.Down,
        "When this is easy: the same, begun with an up-stroke."
    )]
    [InlineData(
        Technique.Alternate,
        FirstStroke.Up,
        "When this is easy: the same, begun with a down-stroke."
    )]
    [InlineData(Technique.AllDown, FirstStroke.Down, "When this is easy: the same with up-strokes only.")]
    [InlineData(Technique.Economy, FirstStroke.Down, "")]
    public void The_variation_exchanges_strokes_where_that_keeps_their_rule(
        Technique technique,
        FirstStroke first,
        string words
    )
    {
        var recipe = Played.Recipe("straight-up") with
        {
            Picking = new PickingPlan { Technique = technique, First = first },
        };

        Assert.Equal(words, OtherStroke.Of(Played.Of(recipe))?.Words ?? "");
    }

    private static Page Sheet(string id) =>
        SheetMaker.Make(Played.Of(id), SheetDefaults.Of(Played.Measured(id)), new SheetOptions()).OrThrow();

    private static double StaffMm(Page sheet)
    {
        var lines = sheet
            .Marks.OfType<LineMark>()
            .Where(mark =>
                mark.Kind == "staff-line" && mark.Id.StartsWith("system-0-", StringComparison.Ordinal)
            )
            .Select(mark => mark.From.Y)
            .ToList();
        return lines.Max() - lines.Min();
    }

    private static double LowestInk(Page sheet) =>
        sheet.Marks.Where(mark => mark.Kind != "foot").Max(mark => MarkBox.Of(mark).Bottom);
}
