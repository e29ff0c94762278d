using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Sound.Click;

/// <summary>Where the click falls.</summary>
public enum ClickPattern
{
    /// <summary>Every beat, the first of the bar higher.</summary>
    Beats,

    /// <summary>The last beat of each group: 2 and 4.</summary>
    Backbeat,

    /// <summary>The first beat of the bar.</summary>
    Downbeat,

    /// <summary>Half-way between the beats; swung where the line is.</summary>
    Offbeat,

    /// <summary>Every pulse, beats louder.</summary>
    Subdivision,

    /// <summary>The first note of each group of the line.</summary>
    Groups,

    /// <summary>Beats, and the groups of the line against them.</summary>
    BeatsAndGroups,
}

/// <summary>What the click plays.</summary>
public sealed record ClickPlan
{
    /// <summary>Where it falls; the count-in always has every beat.</summary>
    public ClickPattern Pattern { get; init; }

    /// <summary>Pulses in a beat for a subdivided click; null for those of the line.</summary>
    public int? PulsesPerBeat { get; init; }

    /// <summary>Beats in each accent group of the bar; empty for the usual grouping of the metre.</summary>
    public ImmutableArray<int> Grouping { get; init; } = [];

    /// <summary>Bars clicked before bars of silence.</summary>
    public int SoundingBars { get; init; } = 1;

    /// <summary>Silent bars after them; 0 for none.</summary>
    public int SilentBars { get; init; }

    /// <summary>Only every so many bars; 1 for each.</summary>
    public int EveryBars { get; init; } = 1;

    /// <summary>What can't be clicked, if anything.</summary>
    public Fault? Check(Meter meter)
    {
        if (!Grouping.IsEmpty && (Grouping.Any(size => size < 1) || Grouping.Sum() != meter.BeatsPerBar))
        {
            return new Fault(
                $"groups of {string.Join('+', Grouping)} beats do not fill {meter}",
                "grouping",
                $"groups that add up to {meter.BeatsPerBar}"
            );
        }

        return PulsesPerBeat is < 1 or > 16 || SoundingBars < 1 || SilentBars < 0 || EveryBars < 1
            ? new Fault("numbers of the click out of range", "click", "1 to 16 pulses, bars from 1")
            : null;
    }

    /// <summary>Whether a bar after the count-in is clicked.</summary>
    internal bool Sounds(int bar) =>
        bar % EveryBars == 0 && (SilentBars == 0 || bar % (SoundingBars + SilentBars) < SoundingBars);
}
