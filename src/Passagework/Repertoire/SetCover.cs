using System.Collections.Immutable;
using System.Numerics;

namespace Passagework.Repertoire;

/// <summary>The fewest sets that hold everything: branch and bound, exact.</summary>
/// <remarks>
/// State: what is still open, which sets may still be taken, which were taken. At each node open elements that come for
/// free with others and sets that others outdo are dropped, an element with one set left forces it, and the element with
/// the fewest sets is branched on. The bound gives every open element a price such that no set holds more than 1 of
/// price: every cover then has at least the sum of sets. It is never below open elements over the largest set, and, begun
/// from nothing, counts elements no two of which share a set (the dual of the covering programme; V. Chvátal, "A greedy heuristic
/// for the set-covering problem", Mathematics of Operations Research 4, 1979). Ties: sets in the order given.
/// </remarks>
internal sealed class SetCover
{
    /// <summary>Most sets.</summary>
    public const int MostSets = 64;

    /// <summary>Most elements.</summary>
    public const int MostElements = 128;

    private readonly UInt128[] _sets;
    private readonly ulong[] _holders;
    private readonly int _mostNodes;
    private readonly CancellationToken _stop;
    private ulong _best;

    private SetCover(UInt128[] sets, int mostNodes, CancellationToken stop)
    {
        _sets = sets;
        _mostNodes = mostNodes;
        _stop = stop;
        _holders = new ulong[MostElements];
        for (var element = 0; element < MostElements; element++)
        {
            for (var set = 0; set < sets.Length; set++)
            {
                _holders[element] |= Has(sets[set], element) ? 1UL << set : 0;
            }
        }
    }

    /// <summary>Nodes looked at.</summary>
    public int Nodes { get; private set; }

    private bool Stopped => Nodes >= _mostNodes || _stop.IsCancellationRequested;

    /// <summary>The fewest sets that hold all elements that any set holds.</summary>
    /// <param name="sets">Up to 64 sets of up to 128 elements.</param>
    /// <param name="first">A cover to be improved on, as indices of sets.</param>
    /// <param name="mostNodes">Nodes after which the search gives up.</param>
    /// <param name="stop">Asked at every node.</param>
    /// <returns>Indices in ascending order, whether none is smaller, and the nodes looked at.</returns>
    public static (ImmutableArray<int> Taken, bool IsProved, int Nodes) Solve(
        UInt128[] sets,
        IEnumerable<int> first,
        int mostNodes,
        CancellationToken stop
    )
    {
        var search = new SetCover(sets, mostNodes, stop);
        search._best = first.Aggregate(0UL, (taken, set) => taken | (1UL << set));
        var all = sets.Aggregate(UInt128.Zero, (open, set) => open | set);
        search.Visit(all, sets.Length == MostSets ? ulong.MaxValue : (1UL << sets.Length) - 1, 0);
        ImmutableArray<int> taken =
        [
            .. Enumerable.Range(0, sets.Length).Where(set => ((search._best >> set) & 1) == 1),
        ];
        return (taken, !search.Stopped, search.Nodes);
    }

    private void Visit(UInt128 open, ulong free, ulong taken)
    {
        Nodes++;
        if (Stopped || !Reduce(ref open, ref free, ref taken))
        {
            return;
        }

        if (open == 0)
        {
            _best = Size(taken) < Size(_best) ? taken : _best;
            return;
        }

        if (Size(taken) + CoverBound.Of(open, free, _sets, _holders) >= Size(_best))
        {
            return;
        }

        var element = Scarcest(open, free);
        foreach (var set in ByWorth(_holders[element] & free, open))
        {
            Visit(open & ~_sets[set], free & ~(1UL << set), taken | (1UL << set));
            // What holds the element and was tried needs no second look.
            free &= ~(1UL << set);
        }
    }

    // Until nothing changes; false when an open element can't be had any more or nothing better can come of it.
    private bool Reduce(ref UInt128 open, ref ulong free, ref ulong taken)
    {
        do
        {
            if (!Force(ref open, ref free, ref taken))
            {
                return false;
            }
        } while (open != 0 && (DropElements(ref open, free) || DropSets(open, ref free)));

        return Size(taken) < Size(_best);
    }

    // Takes every set that is the last one to hold an open element; false when there is none left for one.
    private bool Force(ref UInt128 open, ref ulong free, ref ulong taken)
    {
        while (open != 0)
        {
            var scarcest = Scarcest(open, free);
            var holders = _holders[scarcest] & free;
            if (BitOperations.PopCount(holders) != 1)
            {
                return holders != 0;
            }

            taken |= holders;
            free &= ~holders;
            open &= ~_sets[BitOperations.TrailingZeroCount(holders)];
        }

        return true;
    }

    // An element is had with any set that holds another one whose holders are all among its own.
    private bool DropElements(ref UInt128 open, ulong free)
    {
        var before = open;
        foreach (var scarce in Bits(before))
        {
            var holders = _holders[scarce] & free;
            foreach (var common in Bits(open))
            {
                var all = _holders[common] & free;
                if (
                    common != scarce
                    && Has(open, scarce)
                    && (holders & ~all) == 0
                    && (holders != all || scarce < common)
                )
                {
                    open &= ~(UInt128.One << common);
                }
            }
        }

        return open != before;
    }

    // A set that holds nothing open that another one does not hold too; of equal ones the first stays.
    private bool DropSets(UInt128 open, ref ulong free)
    {
        var before = free;
        foreach (var less in Bits(before))
        {
            var part = _sets[less] & open;
            foreach (var more in Bits(free))
            {
                var whole = _sets[more] & open;
                if (more != less && (part & ~whole) == 0 && (part != whole || more < less))
                {
                    free &= ~(1UL << less);
                    break;
                }
            }
        }

        return free != before;
    }

    private int Scarcest(UInt128 open, ulong free) =>
        Bits(open).MinBy(element => BitOperations.PopCount(_holders[element] & free));

    private List<int> ByWorth(ulong candidates, UInt128 open) =>
        [.. Bits(candidates).OrderByDescending(set => Size(_sets[set] & open))];

    /// <summary>The elements of a set, ascending.</summary>
    public static IEnumerable<int> Bits(UInt128 set)
    {
        for (; set != 0; set &= set - 1)
        {
            yield return (int)UInt128.TrailingZeroCount(set);
        }
    }

    /// <summary>How many elements a set has.</summary>
    public static int Size(UInt128 set) => (int)UInt128.PopCount(set);

    private static bool Has(UInt128 set, int element) => ((set >> element) & 1) == 1;
}
