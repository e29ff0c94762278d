using System.Diagnostics;

namespace Passagework.Bench.Fuzz;

/// <summary>Feeds spoiled inputs to one reader and keeps count.</summary>
internal sealed class FuzzRun
{
    /// <summary>An input that takes longer is counted as slow.</summary>
    public static readonly TimeSpan Slow = TimeSpan.FromMilliseconds(500);

    private const int MostKept = 20;
    private readonly FuzzTarget _target;

    public FuzzRun(FuzzTarget target) => _target = target;

    public int Read { get; private set; }

    public int Accepted { get; private set; }

    public int Crashes { get; private set; }

    public int SlowInputs { get; private set; }

    public TimeSpan Slowest { get; private set; }

    /// <summary>The input in hand and when it was begun, for whoever watches from outside.</summary>
    public (string Text, long Begun)? InHand { get; private set; }

    /// <summary>Inputs that crashed or were slow, with what happened; the first twenty.</summary>
    public List<(string Text, string What)> Failures { get; } = [];

    public void Go(Mutator mutator, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var text = mutator.Next();
            var begun = Stopwatch.GetTimestamp();
            InHand = (text, begun);
            Try(text);
            Note(text, Stopwatch.GetElapsedTime(begun));
        }

        InHand = null;
    }

    private void Try(string text)
    {
        try
        {
            Accepted += _target.Accepts(text) ? 1 : 0;
        }
#pragma warning disable CA1031 // Every kind of exception is what is looked for.
        catch (Exception crash)
#pragma warning restore CA1031
        {
            Crashes++;
            Keep(text, crash.ToString());
        }
    }

    private void Note(string text, TimeSpan took)
    {
        Read++;
        Slowest = took > Slowest ? took : Slowest;
        if (took > Slow)
        {
            SlowInputs++;
            Keep(text, $"took {took.TotalMilliseconds:F0} ms");
        }
    }

    private void Keep(string text, string what)
    {
        if (Failures.Count < MostKept)
        {
            Failures.Add((text, what));
        }
    }
}
