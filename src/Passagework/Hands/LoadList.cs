namespace Passagework.Hands;

/// <summary>One hand's demands with the time there is for each, one entry for each transition of a line.</summary>
/// <remarks>Equal pairs of demand and time share one class, so that a line's loads are computed once for each.</remarks>
internal sealed class LoadList
{
    private readonly int[] _classOf;
    private readonly List<(Demand Demand, double Gap)> _classes = [(Demand.None, 1)];
    private readonly Dictionary<(Demand Demand, double Gap), int> _numbers = [];

    /// <summary>A list of transitions that ask nothing yet.</summary>
    public LoadList(int count) => _classOf = new int[count];

    /// <summary>Number of transitions.</summary>
    public int Count => _classOf.Length;

    /// <summary>The class of each transition; class 0 asks nothing.</summary>
    public ReadOnlySpan<int> ClassOf => _classOf;

    /// <summary>The classes: demand and time there is, in pulses.</summary>
    public IReadOnlyList<(Demand Demand, double Gap)> Classes => _classes;

    /// <summary>What one transition asks.</summary>
    public Demand DemandOf(int transition) => _classes[_classOf[transition]].Demand;

    /// <summary>Whether any transition asks anything.</summary>
    public bool AsksNothing => _classes.Count == 1;

    /// <summary>Sets what a transition asks and the time there is for it, in pulses.</summary>
    public void Set(int transition, Demand demand, double gapPulses)
    {
        if (demand.IsNone)
        {
            return;
        }

        var key = (demand, gapPulses);
        if (!_numbers.TryGetValue(key, out var number))
        {
            number = _classes.Count;
            _classes.Add(key);
            _numbers[key] = number;
        }

        _classOf[transition] = number;
    }

    /// <summary>The demands in ms for the entries of a player, one for each transition.</summary>
    public double[] Milliseconds(double[] basis) => Each(known => known.Demand.At(basis));

    /// <summary>The loads at one pulse a second: demand over the time there is, one for each transition.</summary>
    public double[] Loads(double[] basis) => Each(known => known.Demand.At(basis) / (1000 * known.Gap));

    /// <summary>Whether at least half of each demand rests on assumed parameters, one for each transition.</summary>
    public bool[] AreAssumed(double[] basis) =>
        Array.ConvertAll(
            Each(known => known.Demand.AssumedAt(basis) - (known.Demand.At(basis) / 2)),
            more => more >= 0
        );

    // Worked out once for each class.
    private double[] Each(Converter<(Demand Demand, double Gap), double> figure)
    {
        var byClass = _classes.ConvertAll(figure);
        return Array.ConvertAll(_classOf, number => byClass[number]);
    }
}
