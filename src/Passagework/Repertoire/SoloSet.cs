using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>Solos in which figures are looked up: how many hold one, and how many would by chance.</summary>
public sealed class SoloSet
{
    private const double LeastShare = 0.1;
    private const double LeastLift = 1.5;
    private readonly Dictionary<CellShape, (List<int> Solos, int Times)> _found = [];
    private readonly ImmutableArray<Melody> _solos;
    private readonly NoteChain _chain;
    private readonly ImmutableArray<int[]> _windows;

    /// <summary>Reads the solos; the time taken grows with their notes together.</summary>
    public SoloSet(IEnumerable<Line> solos)
    {
        _solos = [.. solos.Select(line => new Melody(line))];
        _chain = new NoteChain(_solos);
        for (var number = 0; number < _solos.Length; number++)
        {
            Find(number);
        }

        _windows =
        [
            .. Enumerable
                .Range(0, CellShape.MostNotes + 1)
                .Select(notes => _solos.Select(solo => solo.Windows(notes)).ToArray()),
        ];
        Notes = _solos.Sum(solo => solo.Count);
    }

    /// <summary>Number of solos.</summary>
    public int Count => _solos.Length;

    /// <summary>Notes of all of them.</summary>
    public int Notes { get; }

    /// <summary>How many solos hold a figure, begun on any note; figures longer than six notes are not counted.</summary>
    public int Holding(CellShape shape) => Holders(shape).Count;

    /// <summary>Which solos hold it, by their number from 0, ascending.</summary>
    public IReadOnlyList<int> Holders(CellShape shape) => _found.GetValueOrDefault(shape).Solos ?? [];

    /// <summary>How often it occurs in all of them.</summary>
    public int Times(CellShape shape) => _found.GetValueOrDefault(shape).Times;

    /// <summary>Document frequency: the share of solos that hold a figure; null when there are no solos.</summary>
    public double? ShareHolding(CellShape shape) => Count == 0 ? null : (double)Holding(shape) / Count;

    /// <summary>The share of solos that would hold it by chance, see <c>docs/repertoire.md</c>; null when there are no solos.</summary>
    public double? ExpectedShare(CellShape shape)
    {
        if (Count == 0)
        {
            return null;
        }

        // 1 − (1 − p)^n, without losing a small p.
        var chance = _chain.Probability(shape);
        return _windows[shape.Notes].Average(windows => 1 - Math.Exp(windows * LogOfRest(chance)));
    }

    /// <summary>How many times more solos hold it than chance would have it; null when chance never makes it.</summary>
    public double? Lift(CellShape shape) =>
        ExpectedShare(shape) is > 0 and var expected ? ShareHolding(shape) / expected : null;

    /// <summary>Whether a figure is in half again as many solos as by chance (assumed).</summary>
    public bool BeatsChance(CellShape shape) => Holding(shape) > 0 && Lift(shape) >= LeastLift;

    /// <summary>Whether it may be said that a figure lives in this music: in a tenth of the solos and half again as many as by chance (both assumed).</summary>
    public bool IsAtHome(CellShape shape) => ShareHolding(shape) >= LeastShare && BeatsChance(shape);

    private void Find(int number)
    {
        var shapes = Enumerable
            .Range(Cells.Fewest, Cells.Most - Cells.Fewest + 1)
            .SelectMany(_solos[number].Shapes);
        foreach (var group in shapes.GroupBy(shape => shape))
        {
            var (holders, times) = _found.GetValueOrDefault(group.Key, ([], 0));
            holders.Add(number);
            _found[group.Key] = (holders, times + group.Count());
        }
    }

    private static double LogOfRest(double chance) => chance < 1 ? Math.Log(1 - chance) : double.MinValue;
}
