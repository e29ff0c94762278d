using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>What a take plan must keep to.</summary>
internal static class TakePlanRules
{
    public static Fault? Check(TakePlan plan)
    {
        foreach (var number in TakeNumbers.All)
        {
            if (number.Of(plan) is { } value && !(value >= number.Least && value <= number.Most))
            {
                return Outside(number.Name, value, (number.Least, number.Most));
            }
        }

        foreach (var list in TakeNumbers.Lists)
        {
            foreach (var value in list.Of(plan))
            {
                if (!(value >= list.Range.Least && value <= list.Range.Most))
                {
                    return Outside(list.Name, value, list.Range);
                }
            }
        }

        return plan.RingLeastMs <= plan.RingMostMs
            ? null
            : Outside("ringLeastMs", plan.RingLeastMs, (1, plan.RingMostMs));
    }

    /// <summary>What can't be played of an exercise with so many notes, if anything.</summary>
    public static Fault? CheckNotes(TakePlan plan, int notes)
    {
        foreach (var list in TakeNumbers.Lists.Where(list => list.Whole))
        {
            foreach (var value in list.Of(plan).Where(value => value >= notes))
            {
                return Outside(list.Name, value, (0, notes - 1));
            }
        }

        return null;
    }

    private static Fault Outside(string name, double value, (double Least, double Most) range) =>
        new(
            string.Create(CultureInfo.InvariantCulture, $"{value} is out of range"),
            name,
            string.Create(CultureInfo.InvariantCulture, $"{range.Least} to {range.Most}")
        );
}
