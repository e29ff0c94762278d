using BenchmarkDotNet.Attributes;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Bench;

/// <summary>From what is played to the file of a page: sixteen bars of sixteenths, a print with its strip, long music.</summary>
[MemoryDiagnoser]
public class SheetBenchmarks
{
    private const double Dpi = 150;
    private Realization _sixteen = null!;
    private Realization _hundred = null!;
    private Realization _fiveHundred = null!;
    private SheetContent _words = null!;
    private Measurement _fives = null!;
    private Page _score = null!;
    private Page _sheet = null!;

    /// <summary>Builds the inputs.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        var measured = Measurer.Measure(Bars(16), Player.At(2)).OrThrow();
        _sixteen = measured.Realization;
        _hundred = Realized(100);
        _fiveHundred = Realized(500);
        _words = SheetDefaults.Of(measured);
        _fives = Measurer
            .Measure(Library.Find("groups-of-five-up-and-down").OrThrow().Recipe, Player.At(2))
            .OrThrow();
        _score = Score();
        _sheet = Sheet();
    }

    /// <summary>Sixteen bars engraved on one page, staff over tab: 256 notes.</summary>
    [Benchmark(Baseline = true)]
    public Page Score() => ScorePages.Tall(ScoreEngraver.Engrave(_sixteen, new ScoreOptions()).OrThrow());

    /// <summary>The one-page sheet of it, with every form that was tried until one fitted.</summary>
    [Benchmark]
    public Page Sheet() => SheetMaker.Make(_sixteen, _words, new SheetOptions()).OrThrow();

    /// <summary>Sixteen bars to SVG: at most 15 ms.</summary>
    [Benchmark]
    public string Score_to_svg() => SvgWriter.Write(Score(), SvgStyle.Print).OrThrow();

    /// <summary>The sheet to SVG: at most 15 ms.</summary>
    [Benchmark]
    public string Sheet_to_svg() => SvgWriter.Write(Sheet(), SvgStyle.Print).OrThrow();

    /// <summary>The sheet to PDF: at most 50 ms.</summary>
    [Benchmark]
    public byte[] Sheet_to_pdf() => PdfWriter.Write(new Document([Sheet()], _words.Title)).OrThrow();

    /// <summary>The sheet to PNG: at most 120 ms.</summary>
    [Benchmark]
    public byte[] Sheet_to_png() => PngWriter.Write(Sheet(), Dpi).OrThrow();

    /// <summary>The writer alone.</summary>
    [Benchmark]
    public string Svg_alone() => SvgWriter.Write(_score, SvgStyle.Print).OrThrow();

    /// <summary>The writer alone.</summary>
    [Benchmark]
    public byte[] Pdf_alone() => PdfWriter.Write(new Document([_sheet], _words.Title)).OrThrow();

    /// <summary>The writer alone.</summary>
    [Benchmark]
    public byte[] Png_alone() => PngWriter.Write(_sheet, Dpi).OrThrow();

    /// <summary>Groups of five up and down with strip, key, neck and beat on one picture, to SVG.</summary>
    [Benchmark]
    public string Print_with_strip_to_svg() =>
        SvgWriter
            .Write(ExercisePrint.Picture(_fives, new PrintOptions()).OrThrow(), SvgStyle.Screen)
            .OrThrow();

    /// <summary>A hundred bars engraved: 1,600 notes.</summary>
    [Benchmark]
    public Score Hundred_bars() => ScoreEngraver.Engrave(_hundred, new ScoreOptions()).OrThrow();

    /// <summary>Five hundred bars engraved: at most some five times as long as a hundred.</summary>
    [Benchmark]
    public Score Five_hundred_bars() => ScoreEngraver.Engrave(_fiveHundred, new ScoreOptions()).OrThrow();

    private static Realization Realized(int bars) =>
        LineBuilder.Build(Bars(bars)).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();

    // Groups of five in sixteenths, over and over.
    internal static Recipe Bars(int bars)
    {
        var fives = LineBuilder.Build(Library.Find("groups-of-five-up").OrThrow().Recipe).OrThrow();
        return new Recipe
        {
            Title = "Fives over and over",
            Notes = fives.Recipe.Notes,
            Written = new WrittenLine([
                .. Enumerable
                    .Range(0, bars * 16)
                    .Select(i => new WrittenEntry
                    {
                        Place = fives.Notes[i % fives.Notes.Length].Place,
                        Duration = Fraction.Of(1, 16),
                        Group = i / 5,
                        Accent = i % 5 == 0,
                    }),
            ]),
        };
    }
}
