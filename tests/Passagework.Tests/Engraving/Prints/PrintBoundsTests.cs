using System.Diagnostics;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>Large, tiny and odd music through every door of the page: a correct page, or one clear message.</summary>
public sealed class PrintBoundsTests
{
    [Fact]
    public void No_notes_are_refused_before_anything_is_drawn()
    {
        Assert.Equal("$.written: has 0 entries; 1 to 20000", Refused(Written([])));
        Assert.Equal("$.written: the line holds only rests; at least one note", Refused(Written([Rest])));
    }

    [Theory]
    [InlineData(1, 0, 24)]
    [InlineData(1, 24, 24)]
    [InlineData(6, 24, 24)]
    [InlineData(1, 36, 36)]
    public void One_note_is_a_page(int line, int fret, int frets)
    {
        var recipe = Written([Note(line, fret, Fraction.Of(1, 4))]) with
        {
            Instrument = new Fretboard { Frets = frets },
        };
        var measured = Played.Measured(recipe);
        var picture = ExercisePrint.Picture(measured, new PrintOptions()).OrThrow();
        var sheet = SheetMaker
            .Make(measured.Realization, SheetDefaults.Of(measured), new SheetOptions())
            .OrThrow();

        Assert.Empty(PrintInk.Wrong(picture));
        Assert.Equal([$"{fret}"], Numbers([picture]));
        Assert.Equal([$"{fret}"], Numbers([sheet]));
        Assert.Equal([$"{fret}"], Numbers(ExercisePrint.Pages(measured, new PrintOptions()).OrThrow().Pages));
    }

    [Fact]
    public void A_fret_that_the_neck_has_not_is_refused() =>
        Assert.StartsWith(
            "$.written[0].place: the instrument has no place 1:25",
            Refused(Written([Note(1, 25, Fraction.Of(1, 4))])),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(64)]
    [InlineData(128)]
    public void A_bar_of_shortest_notes_is_a_page(int part)
    {
        var measured = Played.Measured(
            Written([
                .. Enumerable
                    .Range(0, part)
                    .Select(i => Note(6 - (i % 6), 5 + (i % 3), Fraction.Of(1, part))),
            ])
        );

        Assert.Empty(PrintInk.Wrong(ExercisePrint.Picture(measured, new PrintOptions()).OrThrow()));
        Assert.All(
            ExercisePrint.Pages(measured, new PrintOptions()).OrThrow().Pages,
            page => Assert.Empty(PrintInk.Wrong(page))
        );
    }

    [Fact]
    public void Five_thousand_notes_are_pages_in_bounded_time_and_memory()
    {
        var measured = FiveThousand.Value;
        ExercisePrint.Pages(Many(500), new PrintOptions()).OrThrow();

        var watch = Stopwatch.StartNew();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var document = ExercisePrint.Pages(measured, new PrintOptions()).OrThrow();
        var pdf = PdfWriter.Write(document).OrThrow();
        var (time, bytes) = (watch.Elapsed, GC.GetAllocatedBytesForCurrentThread() - before);

        Assert.Equal(5000, Numbers(document.Pages).Count);
        Assert.InRange(pdf.Length, 100_000, 8_000_000);
        Assert.True(time < Longest, $"{time}");
        Assert.True(bytes < 400_000_000, $"{bytes:N0} bytes");
    }

    [Fact]
    public void Music_too_long_for_one_picture_is_refused_in_bounded_time()
    {
        var measured = FiveThousand.Value;
        var watch = Stopwatch.StartNew();

        Assert.False(ExercisePrint.Picture(measured, new PrintOptions()).TryGet(out _, out var fault));
        Assert.Matches(
            @"^the picture: \d+ mm high; at most 2000 mm: fewer bars, or pages \(PDF\)$",
            fault.ToString()
        );
        Assert.True(watch.Elapsed < Longest, $"{watch.Elapsed}");
    }

    [Fact]
    public void Five_thousand_notes_are_a_sheet_in_bounded_time_and_memory()
    {
        var measured = FiveThousand.Value;
        var watch = Stopwatch.StartNew();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sheet = SheetMaker
            .Make(measured.Realization, SheetDefaults.Of(measured), new SheetOptions())
            .OrThrow();
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.StartsWith("of 313 bars are printed bars 1 to ", sheet.Remarks[0], StringComparison.Ordinal);
        Assert.True(watch.Elapsed < Longest, $"{watch.Elapsed}");
        Assert.True(bytes < 400_000_000, $"{bytes:N0} bytes");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_tempo_out_of_range_is_refused(double bpm)
    {
        var options = new PrintOptions { TempoBpm = bpm };

        Assert.False(
            ExercisePrint.Picture(Played.Measured("straight-up"), options).TryGet(out _, out var fault)
        );
        Assert.Contains("above 0, at most 1000 beats a minute", fault.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(1000)]
    public void The_slowest_and_the_fastest_tempo_are_pages(double bpm)
    {
        var options = new PrintOptions { TempoBpm = bpm };
        var picture = ExercisePrint.Picture(Played.Measured("groups-of-five-up"), options).OrThrow();

        Assert.Empty(PrintInk.Wrong(picture));
    }

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(1900)]
    public void Everything_stands_inside_however_wide_the_music_is_asked_for(double widthMm)
    {
        var options = new PrintOptions { Music = new ScoreOptions { WidthMm = widthMm } };
        var made = ExercisePrint.Picture(Played.Measured("straight-up"), options);

        if (made.TryGet(out var picture, out var fault))
        {
            Assert.Empty(PrintInk.Wrong(picture));
            Assert.NotEmpty(SvgWriter.Write(picture, SvgStyle.Print).OrThrow());
        }
        else
        {
            Assert.Contains("a wider line or a smaller staff", fault.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_paper_that_is_none_is_refused_by_name()
    {
        var measured = Played.Measured("straight-up");

        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ExercisePrint.Pages(measured, new PrintOptions { Paper = (Paper)7 })
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SheetMaker.Make(
                measured.Realization,
                SheetDefaults.Of(measured),
                new SheetOptions { Paper = (Paper)7 }
            )
        );
    }

    // Less than 2 s on two quiet cores; five times that leaves room for a busy machine.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    private static WrittenEntry Rest { get; } = new() { Duration = Fraction.Of(1, 4) };

    private static WrittenEntry Note(int line, int fret, Fraction length) =>
        new() { Place = Place.At(line, fret), Duration = length };

    private static Recipe Written(IEnumerable<WrittenEntry> entries) =>
        new() { Title = "Written", Written = new WrittenLine([.. entries]) };

    private static Measurement Many(int notes) =>
        Played.Measured(
            Written(
                Enumerable.Range(0, notes).Select(i => Note((i % 6) + 1, 5 + (i % 4), Fraction.Of(1, 16)))
            )
        );

    private static readonly Lazy<Measurement> FiveThousand = new(() => Many(5000));

    private static string Refused(Recipe recipe) =>
        LineBuilder.Build(recipe) is Outcome<Line>.Refused refused ? refused.Fault.ToString() : "built";

    private static List<string> Numbers(IEnumerable<Page> pages) =>
        [
            .. pages
                .SelectMany(page => page.Marks)
                .OfType<TextMark>()
                .Where(mark =>
                    mark.Kind == "tab-number" && !mark.Id.StartsWith("varied", StringComparison.Ordinal)
                )
                .Select(mark => mark.Text),
        ];
}
