using BenchmarkDotNet.Attributes;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Theory;

namespace Passagework.Bench;

/// <summary>From a recipe to its figures: line, fingering, strokes, demands, ceilings with their range.</summary>
[MemoryDiagnoser]
public class MeasureBenchmarks
{
    private static readonly Player Player = Player.At(2);
    private Recipe _twoHundred = new();
    private Line _thousand = null!;
    private Line _tenThousand = null!;
    private List<Recipe> _shelf = [];

    /// <summary>Builds the inputs.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        var fives = Library.Find("groups-of-five-up-and-down").OrThrow().Recipe;
        _twoHundred = fives with { Movement = fives.Movement with { Direction = Direction.Up, Repeat = 5 } };
        _thousand = LineBuilder
            .Build(fives with { Movement = fives.Movement with { Direction = Direction.Up, Repeat = 25 } })
            .OrThrow();
        _tenThousand = LineBuilder
            .Build(fives with { Movement = fives.Movement with { Direction = Direction.Up, Repeat = 250 } })
            .OrThrow();
        _shelf =
        [
            .. Library
                .All.SelectMany(exercise =>
                    Enumerable
                        .Range(0, 12)
                        .Select(pitch => InKey(exercise.Recipe, RootNames.Usual(pitch, minor: true)))
                )
                .OfType<Recipe>(),
        ];
    }

    /// <summary>200 notes from recipe to figures, the plain scale beside them.</summary>
    [Benchmark(Baseline = true)]
    public Measurement Recipe_of_200_notes() => Measurer.Measure(_twoHundred, Player).OrThrow();

    /// <summary>1,000 notes, line already built.</summary>
    [Benchmark]
    public Measurement Line_of_1000_notes() => Measurer.Measure(_thousand, Player).OrThrow();

    /// <summary>10,000 notes, line already built: at most eleven times as long as 1,000.</summary>
    [Benchmark]
    public Measurement Line_of_10000_notes() => Measurer.Measure(_tenThousand, Player).OrThrow();

    /// <summary>Every exercise of the shelf in every key where it fits the neck.</summary>
    [Benchmark]
    public int Whole_shelf_in_twelve_keys() =>
        _shelf.Count(recipe => Measurer.Measure(recipe, Player) is Outcome<Measurement>.Done);

    private static Recipe? InKey(Recipe recipe, NoteName root) =>
        KeyChange.ToRoot(recipe, root).TryGet(out var moved, out _) ? moved : null;
}
