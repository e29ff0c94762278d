using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving.Sheets;

public sealed class SheetMakerTests
{
    // 180 by 249 mm, 15 mm from the top, in the middle of the paper; the foot stands 11 mm above the lower edge.
    // The first letter of a line may lean over its edge by a third of a millimetre.
    private static readonly Box A4Box = new(14.6, 15, 195.4, 264);
    private static readonly Box LetterBox = new(17.55, 15, 198.35, 264);

    private static readonly Lazy<ImmutableArray<(string Id, Page Sheet)>> Whole = new(() =>
        [.. Played.All.Select(exercise => (exercise.Id, Make(exercise.Id, new SheetOptions())))]
    );

    [Fact]
    public void Every_exercise_fits_one_page_with_its_ink_apart()
    {
        var wrong = Whole.Value.SelectMany(made =>
            SheetInk.Wrong(made.Sheet, A4Box).Select(text => $"{made.Id}: {text}")
        );

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("groups-of-six-up-and-down")]
    [InlineData("position-shift-up-and-down")]
    public void A_sheet_fits_the_other_paper_in_the_same_arrangement(string id)
    {
        var letter = Make(id, new SheetOptions { Paper = Paper.Letter });

        Assert.Equal(Make(id, new SheetOptions()).Remarks, letter.Remarks);
        Assert.Empty(SheetInk.Wrong(letter, LetterBox));
    }

    [Fact]
    public void Words_and_fret_numbers_are_nine_points_at_least()
    {
        var small = Sheets()
            .SelectMany(sheet => sheet.Marks)
            .OfType<TextMark>()
            .Where(text => InkBoxes.Points(text) < 9 && text.Kind is not "dot-text")
            .Select(text => $"{text.Id} {text.Kind} {text.Text} {InkBoxes.Points(text):0.0}")
            .Distinct();

        Assert.Empty(small);
    }

    [Fact]
    public void No_sheet_speaks_of_percentages()
    {
        var words = Sheets().SelectMany(sheet => sheet.Marks).OfType<TextMark>().Select(text => text.Text);

        Assert.DoesNotContain(
            words,
            text => text.Contains('%') || text.Contains("percent", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Paper_has_its_size()
    {
        var a4 = Make("groups-of-five-up", new SheetOptions());
        var letter = Make("groups-of-five-up", new SheetOptions { Paper = Paper.Letter });

        Assert.Equal((210, 297), (a4.WidthMm, a4.HeightMm));
        Assert.Equal((215.9, 279.4), (letter.WidthMm, letter.HeightMm));
    }

    [Fact]
    public void Music_that_fits_is_printed_whole()
    {
        var sheet = Make("groups-of-five-up", new SheetOptions());

        Assert.Empty(sheet.Remarks);
        Assert.DoesNotContain(sheet.Marks, mark => mark.Kind == "go-on");
        Assert.Equal("Mon Tue Wed Thu Fri Sat Sun", Words(sheet, "log-day"));
        Assert.Equal(Enumerable.Range(0, 40), NotesPrinted(sheet));
    }

    [Fact]
    public void Long_music_is_an_opening_and_the_turn_with_a_sentence()
    {
        var sheet = Make("groups-of-five-up-and-down", new SheetOptions());

        Assert.Equal(
            ["of 5 bars are printed bars 1 to 2, then bar 3", "the log has five rows"],
            sheet.Remarks
        );
        Assert.Equal(
            "Go on up in the same way; the turn is bar 3, written out here. Then go back down in the same way, to the end "
                + "of bar 5.",
            Words(sheet, "go-on")
        );
        Assert.Equal(5, sheet.Marks.Count(mark => mark.Kind == "log-of"));
        Assert.Equal(Enumerable.Range(0, 48), NotesPrinted(sheet));
    }

    [Fact]
    public void Head_plan_and_foot_say_what_they_are_told()
    {
        var content = Content("groups-of-five-up") with
        {
            Student = "Isolde",
            From = new DateOnly(2025, 11, 25),
            Weeks = 2,
            Teacher = "Hedda Quill",
            Room = "Saltmarsh Guitar Room",
        };
        var sheet = SheetMaker.Make(Played.Of("groups-of-five-up"), content, new SheetOptions()).OrThrow();

        Assert.Equal("Isolde 25 November, two weeks", Words(sheet, "person"));
        Assert.Equal("Saltmarsh Guitar Room Hedda Quill", Words(sheet, "foot"));
        Assert.Equal("Groups of five, rising", Words(sheet, "title"));
    }

    [Fact]
    public void Empty_names_leave_lines_to_write_on()
    {
        var marks = Make("groups-of-five-up", new SheetOptions()).Marks;

        Assert.Equal(
            "line-for line-from",
            string.Join(
                ' ',
                marks
                    .Where(mark => mark.Id.StartsWith("line-f", StringComparison.Ordinal))
                    .Select(mark => mark.Id)
            )
        );
    }

    [Fact]
    public void A_title_of_400_letters_is_cut_after_three_lines_and_said_so()
    {
        var title = string.Concat(Enumerable.Repeat("Groups of five ", 27))[..400];
        var sheet = Titled(title).OrThrow();
        var lines = sheet.Marks.OfType<TextMark>().Where(mark => mark.Kind == "title").ToList();

        Assert.Contains("the title is longer than three lines and was cut", sheet.Remarks);
        Assert.Equal(3, lines.Count);
        Assert.EndsWith("…", lines[^1].Text, StringComparison.Ordinal);
        Assert.Equal(16, InkBoxes.Points(lines[0]), 6);
    }

    [Fact]
    public void A_title_without_a_space_is_broken_between_letters()
    {
        var sheet = Titled(new string('m', 60)).OrThrow();

        Assert.True(sheet.Marks.Count(mark => mark.Kind == "title") > 1);
        Assert.Empty(InkBoxes.Outside(sheet.Marks.Where(mark => mark.Kind == "title"), A4Box));
    }

    [Theory]
    [InlineData("Étude sur les doigts", "Étude sur les doigts")]
    [InlineData("Übung für Ähnliches", "Übung für Ähnliches")]
    [InlineData("<b>Fives</b> & \"more\"", "<b>Fives</b> & \"more\"")]
    public void Titles_are_printed_as_they_stand(string title, string expected) =>
        Assert.Equal(expected, Words(Titled(title).OrThrow(), "title"));

    [Theory]
    [InlineData("五つの音")]
    [InlineData("תרגיל")]
    public void Letters_that_the_typeface_lacks_are_named(string title)
    {
        Assert.False(Titled(title).TryGet(out _, out var fault));
        Assert.Equal("title", fault!.Where);
        Assert.Contains("has no", fault.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_sheet_needs_a_title(string title)
    {
        Assert.False(Titled(title).TryGet(out _, out var fault));
        Assert.Equal("title: a sheet needs a title", fault!.ToString());
    }

    [Fact]
    public void A_text_beyond_all_measure_is_refused()
    {
        var content = Content("groups-of-five-up") with { Caution = new string('x', 5000) };

        Assert.False(
            SheetMaker
                .Make(Played.Of("groups-of-five-up"), content, new SheetOptions())
                .TryGet(out _, out var fault)
        );
        Assert.Equal("caution: the text has 5000 letters; at most 4000", fault!.ToString());
    }

    [Fact]
    public void Long_texts_are_cut_and_said_so()
    {
        var content = Content("straight-up") with
        {
            ListenFor = string.Concat(Enumerable.Repeat("no string that is passed over sounds ", 30)),
        };
        var sheet = SheetMaker.Make(Played.Of("straight-up"), content, new SheetOptions()).OrThrow();

        Assert.Contains("'listen for' is longer than six lines and was cut", sheet.Remarks);
    }

    [Fact]
    public void Notes_that_leave_no_room_for_music_are_refused()
    {
        var content = Content("straight-up") with
        {
            WhenEasy = string.Concat(Enumerable.Repeat("play it again ", 280)),
            Caution = string.Concat(Enumerable.Repeat("stop at once ", 300)),
        };

        Assert.False(
            SheetMaker
                .Make(Played.Of("straight-up"), content, new SheetOptions())
                .TryGet(out _, out var fault)
        );
        Assert.Equal("the sheet does not fit on one page, not even with one bar of music", fault!.What);
    }

    [Fact]
    public void A_log_of_dozens_of_rows_does_not_fit()
    {
        var content = Content("straight-up") with { Days = [.. Enumerable.Repeat("day", 40)] };
        var sheet = SheetMaker.Make(Played.Of("straight-up"), content, new SheetOptions()).OrThrow();

        Assert.Contains("the log has five rows", sheet.Remarks);
    }

    [Fact]
    public void Several_exercises_are_several_pages()
    {
        var document = SheetMaker
            .Make(
                [
                    .. new[] { "straight-up", "pedal-up" }.Select(id =>
                        (Played.Of(id), Content(id) with { Teacher = "Hedda Quill" })
                    ),
                ],
                new SheetOptions()
            )
            .OrThrow();

        Assert.Equal(2, document.Pages.Length);
        Assert.Equal("Hedda Quill", document.Author);
    }

    [Fact]
    public void No_exercise_makes_no_document() =>
        Assert.False(SheetMaker.Make([], new SheetOptions()).TryGet(out _, out _));

    [Fact]
    public void The_exercise_that_can_t_be_printed_is_named()
    {
        var made = SheetMaker.Make(
            [
                (Played.Of("straight-up"), Content("straight-up")),
                (Played.Of("straight-up"), Content("straight-up") with { Title = "" }),
            ],
            new SheetOptions()
        );

        Assert.False(made.TryGet(out _, out var fault));
        Assert.Equal("sheet 2: title: a sheet needs a title", fault!.ToString());
    }

    [Theory]
    [InlineData("eight-string", 0)]
    [InlineData("bass", 0)]
    [InlineData("standard", 3)]
    public void Other_instruments_fit_too(string tuning, int capo)
    {
        var recipe = Played.On("groups-of-three-up", tuning, capo);
        var sheet = SheetMaker
            .Make(Played.Of(recipe), SheetDefaults.Of(Played.Measured(recipe)), new SheetOptions())
            .OrThrow();

        Assert.Empty(SheetInk.BlockOverlaps(sheet));
        Assert.Empty(InkBoxes.Outside(sheet.Marks.Where(mark => mark.Kind != "foot"), A4Box));
    }

    [Fact]
    public void A_long_stretch_of_neck_puts_the_plan_under_it()
    {
        var recipe = Played.Recipe("one-string-run-up") with { Layout = new Layout.OneString(1, 0, 22) };
        var sheet = SheetMaker
            .Make(Played.Of(recipe), SheetDefaults.Of(Played.Measured(recipe)), new SheetOptions())
            .OrThrow();
        var neck = sheet.Marks.Where(mark => mark.Kind == "fret-number").Max(mark => MarkBox.Of(mark).Bottom);

        Assert.True(sheet.Marks.Where(mark => mark.Kind == "plan").Min(mark => MarkBox.Of(mark).Top) > neck);
        Assert.Empty(SheetInk.BlockOverlaps(sheet));
    }

    [Fact]
    public void A_written_line_of_5000_notes_prints_its_first_bars()
    {
        var entry = new WrittenEntry { Place = Place.At(6, 5), Duration = Fraction.Of(1, 16) };
        var recipe = new Recipe
        {
            Title = "Long",
            Written = new WrittenLine([.. Enumerable.Repeat(entry, 5000)]),
        };
        var sheet = SheetMaker
            .Make(Played.Of(recipe), new SheetContent { Title = "Long" }, new SheetOptions())
            .OrThrow();

        Assert.Equal("of 313 bars are printed bars 1 to ", sheet.Remarks[0][..^1]);
        Assert.StartsWith("This is bars 1 to ", Words(sheet, "go-on"), StringComparison.Ordinal);
        Assert.EndsWith(
            " of 313; the rest is not printed here.",
            Words(sheet, "go-on"),
            StringComparison.Ordinal
        );
    }

    private static IEnumerable<Page> Sheets() => Whole.Value.Select(made => made.Sheet);

    private static SheetContent Content(string id) => SheetDefaults.Of(Played.Measured(id));

    private static Page Make(string id, SheetOptions options) =>
        SheetMaker.Make(Played.Of(id), Content(id), options).OrThrow();

    private static Outcome<Page> Titled(string title) =>
        SheetMaker.Make(
            Played.Of("straight-up"),
            Content("straight-up") with
            {
                Title = title,
            },
            new SheetOptions()
        );

    private static string Words(Page sheet, string kind) =>
        string.Join(
            ' ',
            sheet.Marks.OfType<TextMark>().Where(mark => mark.Kind == kind).Select(mark => mark.Text)
        );

    private static IEnumerable<int> NotesPrinted(Page sheet) =>
        sheet
            .Marks.Where(mark =>
                mark.Id.StartsWith("system-", StringComparison.Ordinal)
                || mark.Id.StartsWith("turn-", StringComparison.Ordinal)
            )
            .Select(mark => mark.Note)
            .OfType<int>()
            .Distinct()
            .Order();
}
