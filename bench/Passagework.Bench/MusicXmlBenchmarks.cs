using System.Text;
using BenchmarkDotNet.Attributes;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Bench;

/// <summary>MusicXML in and out; files are in memory.</summary>
[MemoryDiagnoser]
public class MusicXmlBenchmarks
{
    private const int Sixteen = 16;
    private const int TenThousand = 10_000;
    private Realization _sixteenBars = null!;
    private byte[] _tenThousandBars = [];

    /// <summary>Builds the inputs.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        _sixteenBars = Played(Sixteen, notesPerBeat: 4);
        _tenThousandBars = Encoding.UTF8.GetBytes(MusicXml.Write(Longer(TenThousand)).OrThrow());
    }

    /// <summary>16 bars of sixteenths with fingers and strokes, staff and tab.</summary>
    [Benchmark]
    public string Sixteen_bars_out() => MusicXml.Write(_sixteenBars).OrThrow();

    /// <summary>The same, compressed.</summary>
    [Benchmark]
    public byte[] Sixteen_bars_out_compressed() => MusicXml.WriteCompressed(_sixteenBars).OrThrow();

    /// <summary>10,000 bars of half notes, staff and tab: 40,000 notes, as many as a line may hold of each.</summary>
    [Benchmark]
    public MusicXmlImport Ten_thousand_bars_in() => MusicXml.Read(_tenThousandBars).OrThrow();

    private static Realization Played(int bars, int notesPerBeat)
    {
        var straight = Library.Find("straight-up").OrThrow().Recipe;
        var recipe = straight with
        {
            Movement = straight.Movement with { Repeat = (bars * 4 * notesPerBeat / 12) + 1 },
            Rhythm = straight.Rhythm with { NotesPerBeat = notesPerBeat },
        };
        return LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();
    }

    // A short line again and again, in half notes; planning ten thousand bars is measured elsewhere.
    private static Realization Longer(int bars)
    {
        var once = Played(Sixteen, notesPerBeat: 4);
        var half = Foundation.Fraction.Of(1, 2);
        var notes = Enumerable
            .Range(0, 2 * bars)
            .Select(index =>
            {
                var played = once.Notes[index % once.Notes.Length];
                var onset = half * Foundation.Fraction.Of(index);
                var note = played.Note with
                {
                    Index = index,
                    Onset = onset,
                    Duration = half,
                    Group = index / 3,
                };
                return played with { Note = note };
            })
            .ToArray();
        var line = once.Line with
        {
            Notes = [.. notes.Select(played => played.Note)],
            End = notes[^1].Note.End,
        };
        return new Realization(line, [.. notes]);
    }
}
