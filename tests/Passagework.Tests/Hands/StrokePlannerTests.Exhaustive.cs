using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>The planner against its slow twin: every sequence of strokes tried.</summary>
public partial class StrokePlannerTests
{
    [Theory]
    [InlineData(Technique.Alternate, FingerOrder.Pima, 6)]
    [InlineData(Technique.Metric, FingerOrder.Pima, 6)]
    [InlineData(Technique.AllDown, FingerOrder.Pima, 6)]
    [InlineData(Technique.AllUp, FingerOrder.Pima, 6)]
    [InlineData(Technique.Economy, FingerOrder.Pima, 6)]
    [InlineData(Technique.Sweep, FingerOrder.Pima, 6)]
    [InlineData(Technique.Legato, FingerOrder.Pima, 6)]
    [InlineData(Technique.Free, FingerOrder.Pima, 6)]
    [InlineData(Technique.Rake, FingerOrder.Pima, 4)]
    [InlineData(Technique.Hybrid, FingerOrder.Pima, 4)]
    [InlineData(Technique.Fingers, FingerOrder.Pima, 4)]
    [InlineData(Technique.Fingers, FingerOrder.IndexMiddle, 4)]
    [InlineData(Technique.Fingers, FingerOrder.MiddleRing, 4)]
    [InlineData(Technique.Fingers, FingerOrder.ThumbIndex, 4)]
    public void Plan_equals_exhaustive_search(Technique technique, FingerOrder fingers, int most)
    {
        var cases = Gen.Select(LineGen.Of(technique, most, fingers), Gen.Int[0, 4], Gen.Int[0, 2]);
        var compared = 0;

        cases.Sample(
            (line, level, clear) =>
            {
                var player = Player.At(level) with { Clear = (Clear)clear };
                if (FingeringPlanner.Plan(line, player).TryGet(out var fingering, out _))
                {
                    Interlocked.Increment(ref compared);
                    Assert.Equal(StrokeSearch.Best(line, fingering, player), Ours(line, fingering, player));
                }
            },
            iter: 3000
        );

        Assert.InRange(compared, 2000, 3000);
    }

    private static string Ours(Line line, Fingering fingering, Player player) =>
        StrokePlanner.Plan(line, fingering, player).TryGet(out var plan, out _)
            ? StrokeSearch.Text(plan.Struck.Select(note => note.State))
            : "none";
}
