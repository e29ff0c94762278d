namespace Passagework.Foundation;

/// <summary>The arcs between two neighbouring layers; equal steps of a problem may share one.</summary>
/// <param name="From">States of the earlier layer.</param>
/// <param name="To">States of the later layer.</param>
/// <param name="Costs">Shape (From, To), row per earlier state, not below 0; infinity where there is no arc.</param>
/// <param name="Ties">Same shape: what counts between paths of equal cost, smaller first.</param>
public sealed record LayeredStep(int From, int To, double[] Costs, long[] Ties);

/// <summary>A chain of layers in which one state of each is chosen.</summary>
/// <param name="StartCosts">Cost of each state of the first layer.</param>
/// <param name="StartTies">What counts there between equal costs.</param>
/// <param name="Steps">The arcs, one step fewer than layers.</param>
/// <param name="Weights">Factor of each step's costs.</param>
/// <param name="Extras">Added to the weighted cost of every arc into a state, one array a step.</param>
public sealed record LayeredProblem(
    double[] StartCosts,
    long[] StartTies,
    IReadOnlyList<LayeredStep> Steps,
    double[] Weights,
    IReadOnlyList<double[]> Extras
);

/// <summary>One way through the layers.</summary>
/// <param name="States">The chosen state of each layer.</param>
/// <param name="Cost">Start cost plus weighted arc costs plus extras.</param>
public sealed record LayeredPath(int[] States, double Cost);
