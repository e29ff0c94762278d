using Passagework.Exercises.Ideas;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Where a practice plan starts and where it aims, in hundredths of the player's top tempo.</summary>
/// <remarks>The default value is ours: from 70 to 95. Where a recipe asks for a tempo, that is the goal.</remarks>
public readonly record struct PlanShares
{
    /// <summary>The lowest share that makes sense as practice (chosen by us).</summary>
    public const int Least = 30;

    /// <summary>The highest: the top tempo itself.</summary>
    public const int Most = 100;

    private const int UsualStart = 70;
    private const int UsualGoal = 95;

    private readonly int _startShift;
    private readonly int _goalShift;

    private PlanShares(int start, int goal) =>
        (_startShift, _goalShift) = (start - UsualStart, goal - UsualGoal);

    /// <summary>Where it starts.</summary>
    public int Start => UsualStart + _startShift;

    /// <summary>Where it aims.</summary>
    public int Goal => UsualGoal + _goalShift;

    /// <summary>Shares from 30 to 100; the start is below the goal.</summary>
    public static Outcome<PlanShares> Of(int start, int goal)
    {
        if (start is < Least or > Most || goal is < Least or > Most)
        {
            return new Fault(
                $"a plan from {AxisText.Of(start)} to {AxisText.Of(goal)} of 100",
                Right: $"both from {AxisText.Of(Least)} to {AxisText.Of(Most)}"
            );
        }

        return start < goal
            ? new PlanShares(start, goal)
            : new Fault(
                $"a plan that starts at {AxisText.Of(start)} of 100 and aims at {AxisText.Of(goal)}",
                Right: "a start below the goal"
            );
    }
}
