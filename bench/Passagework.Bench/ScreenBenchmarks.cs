using BenchmarkDotNet.Attributes;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Screens;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Bench;

/// <summary>From a measured exercise to the markup of its pictures on a page.</summary>
[MemoryDiagnoser]
public class ScreenBenchmarks
{
    private Measurement _sixteen = null!;
    private Measurement _fives = null!;

    /// <summary>Measures the exercises.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        _sixteen = Measurer.Measure(SheetBenchmarks.Bars(16), Player.At(2)).OrThrow();
        _fives = Measurer.Measure(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2)).OrThrow();
    }

    /// <summary>Sixteen bars, 256 notes, with staff, tab, fingers, strokes, counts and strip: at most 15 ms.</summary>
    [Benchmark(Baseline = true)]
    public ScreenScore Sixteen_bars() => Drawn(_sixteen, 1312);

    /// <summary>The same in systems of two beats.</summary>
    [Benchmark]
    public ScreenScore Sixteen_bars_on_a_phone() => Drawn(_sixteen, 358);

    /// <summary>Forty notes in one system.</summary>
    [Benchmark]
    public ScreenScore Forty_notes() => Drawn(_fives, 1312);

    /// <summary>Neck, beat and both shelf pictures of the forty.</summary>
    [Benchmark]
    public int Other_pictures() =>
        ScreenPictures.Neck(_fives.Realization, new FretboardOptions(), 360).OrThrow().Svg.Length
        + ScreenPictures
            .Beat(_fives.Realization.Line, new BeatOptions { Feels = BeatOptions.Plain }, 404)
            .OrThrow()
            .Svg.Length
        + ShelfPictures.Strip(_fives, 220).OrThrow().Svg.Length
        + ShelfPictures.FirstBar(_fives.Realization, 330).OrThrow().Svg.Length;

    private static ScreenScore Drawn(Measurement measured, double widthPx) =>
        ScreenScore.Draw(measured, new ScreenOptions { WidthPx = widthPx, TempoBpm = 60 }).OrThrow();
}
