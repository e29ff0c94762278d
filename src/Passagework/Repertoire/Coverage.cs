namespace Passagework.Repertoire;

/// <summary>How much of one distribution occurs in another.</summary>
public static class Coverage
{
    /// <summary>
    /// Share of the wanted occurrences whose class is practised often enough, 0 to 1; null when nothing is wanted. Not
    /// symmetric: an exercise may hold all moves of a piece that holds few of the exercise's.
    /// </summary>
    /// <param name="wanted">Such as the moves of a piece.</param>
    /// <param name="practised">Such as the moves of one pass of an exercise.</param>
    /// <param name="leastCount">Occurrences in one pass from which a class counts as practised: the times a minute asked for, over passes a minute.</param>
    public static double? Of<TClass>(
        Distribution<TClass> wanted,
        Distribution<TClass> practised,
        double leastCount = 1
    )
        where TClass : struct, IComparable<TClass> => Weighted(wanted, practised, _ => 1, leastCount);

    /// <summary>The same with every class weighed, for instance by the time that its move takes.</summary>
    /// <param name="weight">Weight of a class, 0 or more.</param>
    /// <returns>Null when nothing of any weight is wanted.</returns>
    /// <inheritdoc cref="Of{TClass}"/>
    public static double? Weighted<TClass>(
        Distribution<TClass> wanted,
        Distribution<TClass> practised,
        Func<TClass, double> weight,
        double leastCount = 1
    )
        where TClass : struct, IComparable<TClass>
    {
        var (met, all) = (0.0, 0.0);
        foreach (var each in wanted.Classes)
        {
            var mass = wanted.CountOf(each) * weight(each);
            all += mass;
            var count = practised.CountOf(each);
            met += count > 0 && count >= leastCount ? mass : 0;
        }

        return all > 0 ? met / all : null;
    }
}
