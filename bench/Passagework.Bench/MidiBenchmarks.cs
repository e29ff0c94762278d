using BenchmarkDotNet.Attributes;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Bench;

/// <summary>A Standard MIDI File out and in.</summary>
[MemoryDiagnoser]
public class MidiBenchmarks
{
    private Realization _sixteenBars = null!;
    private byte[] _sixteenBarsFile = [];
    private byte[] _largeFile = [];

    /// <summary>Builds the inputs.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        _sixteenBars = Played(16 * 16);
        _sixteenBarsFile = Midi.Write(_sixteenBars);
        _largeFile = Midi.Write(Played(20_000), new MidiWriting { Remark = false });
    }

    /// <summary>16 bars of sixteenths out: at most 5 ms.</summary>
    [Benchmark(Baseline = true)]
    public byte[] Sixteen_bars_out() => Midi.Write(_sixteenBars);

    /// <summary>The same in.</summary>
    [Benchmark]
    public MidiImport Sixteen_bars_in() => Midi.Read(_sixteenBarsFile).OrThrow();

    /// <summary>20,000 notes in, the most that a line holds, times and swing to be found.</summary>
    [Benchmark]
    public MidiImport Twenty_thousand_notes_in() => Midi.Read(_largeFile).OrThrow();

    private static Realization Played(int notes)
    {
        var entries = Enumerable
            .Range(0, notes)
            .Select(i => new WrittenEntry
            {
                Pitch = new SpelledPitch(NoteName.Of(i % 7, 0), 3),
                Duration = Fraction.Of(1, 16),
            });
        var line = LineBuilder.Build(new Recipe { Written = new WrittenLine([.. entries]) }).OrThrow();
        var places = line.Notes.Select(note => new PlayedNote(
            note,
            line.Recipe.Instrument.PlacesOf(note.Midi).First(),
            1,
            1,
            Stroke.Down
        ));
        return new Realization(line, [.. places]);
    }
}
