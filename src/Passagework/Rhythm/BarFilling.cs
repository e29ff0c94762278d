using System.Collections.Immutable;

namespace Passagework.Rhythm;

/// <summary>Groups that start afresh in every bar, instead of running on until they meet the bar line.</summary>
public static class BarFilling
{
    /// <summary>Whole groups first, then what is left of the bar.</summary>
    /// <param name="barPulses">Pulses in the bar, at least 1.</param>
    /// <param name="group">Pulses in a group, at least 1.</param>
    public static ImmutableArray<int> WholeGroups(int barPulses, int group)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(barPulses, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(group, 1);
        var left = barPulses % group;
        var whole = Enumerable.Repeat(group, barPulses / group);
        return left == 0 ? [.. whole] : [.. whole, left];
    }

    /// <summary>The same, but a single pulse left over joins the group before it, unless that leaves one group only.</summary>
    /// <param name="barPulses">Pulses in the bar, at least 1.</param>
    /// <param name="group">Pulses in a group, at least 1.</param>
    public static ImmutableArray<int> NoSingleLeft(int barPulses, int group)
    {
        var filling = WholeGroups(barPulses, group);
        return group > 1 && filling[^1] == 1 && filling.Length > 2 ? [.. filling[..^2], group + 1] : filling;
    }
}
