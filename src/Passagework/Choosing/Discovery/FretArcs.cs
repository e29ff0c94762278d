namespace Passagework.Choosing.Discovery;

/// <summary>What the solver of fingerings knows: the states of each place and what lies between them.</summary>
/// <param name="Places">Different places.</param>
/// <param name="Counts">States of each place.</param>
internal sealed record FretArcs(int Places, int[] Counts)
{
    /// <summary>Numbers in one vector of the solver.</summary>
    public const int Lane = 4;

    /// <summary>States of a place, filled up to whole vectors.</summary>
    public int Width { get; } = (Counts.Max() + Lane - 1) / Lane * Lane;

    /// <summary>Cost of beginning with a state: place × width + number.</summary>
    public double[] StartCosts { get; private init; } = [];

    /// <summary>What counts between equal costs there.</summary>
    public long[] StartTies { get; private init; } = [];

    /// <summary>
    /// Cost of each arc with that of its end, infinite where there is none; those of two places begin at
    /// <see cref="Between"/>, row per later state, so that earlier states lie side by side.
    /// </summary>
    public double[] Costs { get; private init; } = [];

    /// <summary>What counts between equal costs; as <see cref="Costs"/>.</summary>
    public long[] Ties { get; private init; } = [];

    /// <summary>Arcs yet to be filled in.</summary>
    public static FretArcs Of(int[] counts)
    {
        var empty = new FretArcs(counts.Length, counts);
        var all = empty.Between(counts.Length - 1, counts.Length - 1) + (empty.Width * empty.Width);
        var arcs = empty with
        {
            StartCosts = new double[counts.Length * empty.Width],
            StartTies = new long[counts.Length * empty.Width],
            Costs = new double[all],
            Ties = new long[all],
        };
        Array.Fill(arcs.Costs, double.PositiveInfinity);
        return arcs;
    }

    /// <summary>Where the arcs of two places begin.</summary>
    public int Between(int from, int to) => ((from * Places) + to) * Width * Width;
}
