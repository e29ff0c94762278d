using System.Globalization;
using Passagework.Sound.Performance;

namespace Passagework.Studio.Components.Playing;

/// <summary>Which bars are heard.</summary>
/// <param name="Loops">Whether they are heard again and again.</param>
/// <param name="Bars">The bars, counted from 0; null for all.</param>
public readonly record struct LoopChoice(bool Loops, BarRange? Bars)
{
    /// <summary>All bars again and again.</summary>
    public static LoopChoice All { get; } = new(Loops: true, Bars: null);

    /// <summary>What a word of the list means: all, some, once, or the number of a bar.</summary>
    public static LoopChoice Named(string? word, int bars) =>
        word switch
        {
            _ when int.TryParse(word, CultureInfo.InvariantCulture, out var bar) => Between(bar - 1, bar - 1),
            "some" => new LoopChoice(Loops: true, new BarRange(0, bars)),
            "once" => new LoopChoice(Loops: false, Bars: null),
            _ => All,
        };

    /// <summary>From one bar to another, in either order.</summary>
    public static LoopChoice Between(int one, int other) =>
        new(Loops: true, new BarRange(Math.Min(one, other), Math.Abs(one - other) + 1));

    /// <summary>The same with another first or last bar; the other end goes along where it has to.</summary>
    public LoopChoice WithEnd(int bar, bool isStart, int bars)
    {
        var range = Bars ?? new BarRange(0, bars);
        var last = range.First + range.Count - 1;
        return isStart ? Between(bar, Math.Max(bar, last)) : Between(Math.Min(bar, range.First), bar);
    }

    /// <summary>The same while there are such bars, else all.</summary>
    public LoopChoice Within(int bars) => Bars is { } range && range.First + range.Count > bars ? All : this;
}
