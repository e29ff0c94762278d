namespace Passagework.Choosing.Discovery;

/// <summary>Goes through all cells of one variant that begin with given steps, depth first, and keeps what none beats.</summary>
/// <remarks>Tests at the nodes, cheapest first: width, top tempo that the beginning allows; at the leaves doubles and what is measured.</remarks>
internal sealed class CellSearch
{
    private readonly SearchPlan _plan;
    private readonly int _variant;
    private readonly CellMeasurer _measurer;
    private readonly CellDoubles _doubles;
    private readonly CeilingBound? _bound;
    private readonly int[] _offsets;

    public CellSearch(SearchPlan plan, int variant)
    {
        (_plan, _variant) = (plan, variant);
        _measurer = plan.Variants[variant].NewMeasurer();
        _doubles = new CellDoubles(plan.Variants, plan.Space);
        _bound = plan.Filters.MinCeiling is null ? null : plan.Variants[variant].NewBound();
        _offsets = new int[plan.Space.Length];
        Front = new CellFront(plan.Criteria);
    }

    /// <summary>What none beats so far.</summary>
    public CellFront Front { get; }

    /// <summary>Candidates looked at.</summary>
    public long Visited { get; private set; }

    /// <summary>How many each reason removed.</summary>
    public long[] Removed { get; } = new long[Enum.GetValues<Removal>().Length];

    /// <summary>Looks at every cell with these first steps, until told to stop.</summary>
    public void Run(ReadOnlySpan<int> firstSteps)
    {
        for (var i = 0; i < firstSteps.Length; i++)
        {
            _offsets[i + 1] = _offsets[i] + firstSteps[i];
        }

        Visit(firstSteps.Length + 1);
    }

    private void Visit(int notes)
    {
        if (_plan.Stop.IsCancellationRequested)
        {
            return;
        }

        if (Refused(_offsets.AsSpan(0, notes)) is { } reason)
        {
            Remove(reason, _plan.Space.Below(notes) * _measurer.Takes.Length);
        }
        else if (notes == _offsets.Length)
        {
            Leaf();
        }
        else
        {
            for (var step = -_plan.Space.Reach; step <= _plan.Space.Reach; step++)
            {
                _offsets[notes] = _offsets[notes - 1] + step;
                Visit(notes + 1);
            }
        }
    }

    private Removal? Refused(ReadOnlySpan<int> beginning)
    {
        var (lowest, highest) = (0, 0);
        foreach (var offset in beginning)
        {
            lowest = Math.Min(lowest, offset);
            highest = Math.Max(highest, offset);
        }

        if (highest - lowest >= _plan.Variants[_variant].Path.Length)
        {
            return Removal.TooWide;
        }

        return _bound is not null && _bound.Of(beginning) < _plan.Filters.MinCeiling ? Removal.Ceiling : null;
    }

    private void Leaf()
    {
        var takes = _measurer.Takes;
        if (_doubles.Has(_variant, _offsets))
        {
            Remove(Removal.Double, takes.Length);
            return;
        }

        if (!_measurer.Measure(_offsets))
        {
            Remove(Removal.Unplayable, takes.Length);
            return;
        }

        var number = _plan.Numbers.Of(_variant, _offsets);
        for (var first = 0; first < takes.Length; first++)
        {
            if (Refused(takes[first]) is { } reason)
            {
                Remove(reason, 1);
            }
            else
            {
                Count(1);
                Front.Offer(number + first, takes[first]);
            }
        }
    }

    private Removal? Refused(CellTake take)
    {
        if (_plan.Filters.NoRolls && take.Rolls > 0)
        {
            return Removal.Rolls;
        }

        if (take.Stretch > _plan.Filters.MaxStretch)
        {
            return Removal.Stretch;
        }

        return take.LeastCeiling < _plan.Filters.MinCeiling ? Removal.Ceiling : null;
    }

    private void Remove(Removal reason, long candidates)
    {
        Removed[(int)reason] += candidates;
        Count(candidates);
    }

    private void Count(long candidates)
    {
        Visited += candidates;
        _plan.Report(candidates);
    }
}
