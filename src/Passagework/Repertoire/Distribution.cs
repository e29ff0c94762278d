using System.Collections.Immutable;

namespace Passagework.Repertoire;

/// <summary>How often each class occurs in an exercise, a piece or a set of pieces.</summary>
/// <typeparam name="TClass">Kinds of moves, or cells.</typeparam>
public sealed class Distribution<TClass>
    where TClass : struct, IComparable<TClass>
{
    private readonly Dictionary<TClass, int> _counts;

    private Distribution(Dictionary<TClass, int> counts)
    {
        _counts = counts;
        Classes = [.. counts.Keys.Order()];
        Total = counts.Values.Sum(count => (long)count);
    }

    /// <summary>The classes that occur, in their own order, so that sums do not depend on what came first.</summary>
    public ImmutableArray<TClass> Classes { get; }

    /// <summary>Occurrences of all classes together.</summary>
    public long Total { get; }

    /// <summary>Whether nothing occurs, as in a piece of one note.</summary>
    public bool IsEmpty => Total == 0;

    /// <summary>How many classes there are in effect: e to the entropy of the shares; 1 when one class is all there is, 0 when nothing is.</summary>
    public double EffectiveNumber =>
        IsEmpty ? 0 : Math.Exp(-Classes.Sum(each => ShareOf(each) * Math.Log(ShareOf(each))));

    /// <summary>Counts the classes of a sequence.</summary>
    public static Distribution<TClass> Of(IEnumerable<TClass> occurrences)
    {
        var counts = new Dictionary<TClass, int>();
        foreach (var each in occurrences)
        {
            counts[each] = counts.GetValueOrDefault(each) + 1;
        }

        return new Distribution<TClass>(counts);
    }

    /// <summary>All of them in one: every occurrence weighs the same, so a longer piece weighs more.</summary>
    public static Distribution<TClass> Together(IEnumerable<Distribution<TClass>> parts)
    {
        var counts = new Dictionary<TClass, int>();
        foreach (var (each, count) in parts.SelectMany(part => part._counts))
        {
            counts[each] = counts.GetValueOrDefault(each) + count;
        }

        return new Distribution<TClass>(counts);
    }

    /// <summary>How often a class occurs.</summary>
    public int CountOf(TClass one) => _counts.GetValueOrDefault(one);

    /// <summary>Its share of all occurrences, 0 to 1.</summary>
    public double ShareOf(TClass one) => IsEmpty ? 0 : (double)CountOf(one) / Total;

    /// <summary>The same with classes merged, such as moves without their strokes.</summary>
    public Distribution<TClass> Merged(Func<TClass, TClass> into)
    {
        var counts = new Dictionary<TClass, int>();
        foreach (var (each, count) in _counts)
        {
            counts[into(each)] = counts.GetValueOrDefault(into(each)) + count;
        }

        return new Distribution<TClass>(counts);
    }
}
