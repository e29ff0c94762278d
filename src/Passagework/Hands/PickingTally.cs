using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>Counts the picking hand's moves one after another.</summary>
internal sealed class PickingTally(double spacingMm)
{
    private readonly int[] _kinds = new int[5];
    private readonly int[] _skipsOfKind = new int[5];
    private int _run;

    public int Skips { get; private set; }

    public int Reversals { get; private set; }

    public int AfterDown { get; private set; }

    public int AfterUp { get; private set; }

    public int SameFingerAgain { get; private set; }

    public int BackwardCrossings { get; private set; }

    public int LongestSweep { get; private set; }

    public double TravelMm { get; private set; }

    public int Hops { get; private set; }

    public int Of(ChangeKind kind) => _kinds[(int)kind];

    public int SkipsOf(ChangeKind kind) => _skipsOfKind[(int)kind];

    public void Add(StrokeState from, StrokeState to)
    {
        var distance = Math.Abs(from.Exit - to.Entry);
        if (distance > 0)
        {
            Skips += distance > 1 ? 1 : 0;
            AfterDown += from.Action == Stroke.Down ? 1 : 0;
            AfterUp += from.Action == Stroke.Up ? 1 : 0;
        }

        if (from.IsPicked && to.IsPicked)
        {
            AddPicked(from, to);
            return;
        }

        _run = 0;
        SameFingerAgain += !to.IsPicked && from.Action == to.Action ? 1 : 0;
        var fingers = from.Action >= Stroke.Index && to.Action >= Stroke.Index && from.Action != to.Action;
        BackwardCrossings += fingers && PluckRules.IsBackward(from, to) ? 1 : 0;
    }

    private void AddPicked(StrokeState from, StrokeState to)
    {
        var change = StrokeChange.Of(from, to);
        _kinds[(int)change.Kind]++;
        _skipsOfKind[(int)change.Kind] += change.Distance > 1 ? 1 : 0;
        Reversals += from.Action != to.Action ? 1 : 0;
        _run = change is { Kind: ChangeKind.SweepStep, Distance: 1 } ? _run + 1 : 0;
        LongestSweep = _run == 0 ? LongestSweep : Math.Max(LongestSweep, _run + 1);
        var travel = PlectrumTravel.Of(from, to, spacingMm);
        TravelMm += travel.Millimetres;
        Hops += travel.Hops;
    }
}
