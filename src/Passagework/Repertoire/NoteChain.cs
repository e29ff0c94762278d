using System.Collections.Concurrent;

namespace Passagework.Repertoire;

/// <summary>Chance made from the music itself: each note depends on the one before it and on nothing else.</summary>
/// <remarks>
/// A first-order Markov model of the keys of all solos together, and one of their rhythm steps, taken as independent of
/// each other. The event is the note and not the interval: a chain of intervals would reproduce every figure of three notes as
/// often as it occurs and could never find one remarkable.
/// </remarks>
internal sealed class NoteChain
{
    private const int Keys = 128;
    private const int Steps = 3;
    private readonly double[] _start = new double[Keys];
    private readonly double[,] _next = new double[Keys, Keys];
    private readonly double[] _firstStep = new double[Steps];
    private readonly double[,] _nextStep = new double[Steps, Steps];
    private readonly ConcurrentDictionary<CellShape, double> _known = [];

    public NoteChain(IReadOnlyCollection<Melody> solos)
    {
        foreach (var solo in solos)
        {
            for (var note = 0; note < solo.Count; note++)
            {
                Count(solo, note);
            }
        }

        Share(_start, _next);
        Share(_firstStep, _nextStep);
    }

    /// <summary>The chance that a figure begins at a note of music made this way, 0 to 1.</summary>
    public double Probability(CellShape shape) =>
        _known.GetOrAdd(
            shape,
            each => RhythmOf(each) * Enumerable.Range(0, Keys).Sum(key => From(key, each))
        );

    private void Count(Melody solo, int note)
    {
        if (solo.Holds(note, 2))
        {
            _start[solo.Key(note)]++;
            _next[solo.Key(note), solo.Key(note + 1)]++;
        }

        if (solo.Holds(note, 3))
        {
            _firstStep[(int)solo.Shape(note, 3).Step(0)]++;
        }

        if (solo.Holds(note, 4))
        {
            var shape = solo.Shape(note, 4);
            _nextStep[(int)shape.Step(0), (int)shape.Step(1)]++;
        }
    }

    private double From(int key, CellShape shape)
    {
        var chance = _start[key];
        for (var i = 0; chance > 0 && i < shape.Notes - 1; i++)
        {
            var to = key + shape.Interval(i);
            chance *= to is >= 0 and < Keys ? _next[key, to] : 0;
            key = to;
        }

        return chance;
    }

    private double RhythmOf(CellShape shape)
    {
        var chance = _firstStep[(int)shape.Step(0)];
        for (var i = 1; i < shape.Notes - 2; i++)
        {
            chance *= _nextStep[(int)shape.Step(i - 1), (int)shape.Step(i)];
        }

        return chance;
    }

    // Counts become shares of their sum; a row that was never left stays 0.
    private static void Share(double[] first, double[,] next)
    {
        var all = first.Sum();
        for (var i = 0; i < first.Length; i++)
        {
            first[i] = all > 0 ? first[i] / all : 0;
            var row = Enumerable.Range(0, first.Length).Sum(j => next[i, j]);
            for (var j = 0; row > 0 && j < first.Length; j++)
            {
                next[i, j] /= row;
            }
        }
    }
}
