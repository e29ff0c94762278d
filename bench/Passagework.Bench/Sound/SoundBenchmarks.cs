using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Bench.Sound;

/// <summary>A minute of strings: a line, six strings that all ring, silence, and a stretch rendered after a jump.</summary>
[MemoryDiagnoser]
public class SoundBenchmarks
{
    private const int Seconds = 60;
    private readonly float[] _minute = new float[Seconds * Plucks.Rate];
    private readonly float[] _bars = new float[32 * Plucks.Rate];
    private ImmutableArray<StringEvent> _line;
    private ImmutableArray<StringEvent> _ringing;

    /// <summary>The instrument.</summary>
    [ParamsAllValues]
    public GuitarSound Sound { get; set; }

    /// <summary>Eight notes a second: a line whose notes end, and one whose notes ring until struck again.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _line = [.. Enumerable.Range(0, 8 * Seconds).Select(i => Note(i, 0.125))];
        _ringing = [.. Enumerable.Range(0, 8 * Seconds).Select(i => Note(i, double.PositiveInfinity))];
    }

    [Benchmark(Baseline = true)]
    public float Line() => Render(_line, _minute, 0);

    [Benchmark]
    public float AllSixRinging() => Render(_ringing, _minute, 0);

    [Benchmark]
    public float OneNoteAndSilence() => Render(_line[..1], _minute, 0);

    [Benchmark]
    public float SixteenBarsAfterAJump() => Render(_line, _bars, 20 * Plucks.Rate);

    private float Render(ImmutableArray<StringEvent> events, float[] into, long first)
    {
        new GuitarRenderer(Sound, events, Plucks.Rate).Render(into, first);
        return into[^1];
    }

    private static StringEvent Note(int i, double length) =>
        Plucks.Pluck((i % 6) + 1, i % 5, i * 0.125, (i * 0.125) + length) with
        {
            Action = i % 3 == 2 ? StringAction.Up : StringAction.Down,
        };
}
