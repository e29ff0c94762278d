using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>The tempo of one time through: at its beginning and at its end.</summary>
/// <param name="From">Tempo at the first bar line.</param>
/// <param name="To">Tempo at the last; the way there is even in beats a minute over musical time.</param>
public readonly record struct PassTempo(Tempo From, Tempo To)
{
    /// <summary>One tempo throughout.</summary>
    public static PassTempo Steady(Tempo tempo) => new(tempo, tempo);

    /// <summary>Whether the tempo stays.</summary>
    public bool IsSteady => From == To;
}

/// <summary>How often the music is played, and how fast each time.</summary>
public sealed record TempoPlan
{
    /// <summary>Most times through.</summary>
    public const int MostPasses = 500;

    private TempoPlan(ImmutableArray<PassTempo> passes) => Passes = passes;

    /// <summary>The times through, in order; at least one.</summary>
    public ImmutableArray<PassTempo> Passes { get; }

    /// <summary>One tempo, so many times.</summary>
    public static Outcome<TempoPlan> Steady(Tempo tempo, int times = 1) =>
        Repeated(times, _ => PassTempo.Steady(tempo));

    /// <summary>From a start to a goal in equal steps, one time through each; a single time is played at the goal.</summary>
    public static Outcome<TempoPlan> Ladder(Tempo start, Tempo goal, int times) =>
        Repeated(times, pass => PassTempo.Steady(Between(start, goal, times > 1 ? pass / (times - 1.0) : 1)));

    /// <summary>Slow and goal in turn, slow first.</summary>
    public static Outcome<TempoPlan> Alternating(Tempo slow, Tempo goal, int times) =>
        Repeated(times, pass => PassTempo.Steady(pass % 2 == 0 ? slow : goal));

    /// <summary>A gradual change from the first bar line of the first time to the end of the last.</summary>
    public static Outcome<TempoPlan> Gradual(Tempo from, Tempo to, int times = 1) =>
        Repeated(
            times,
            pass => new PassTempo(
                Between(from, to, pass / (double)times),
                Between(from, to, (pass + 1) / (double)times)
            )
        );

    /// <summary>Content equality.</summary>
    public bool Equals(TempoPlan? other) => other is not null && Passes.SequenceEqual(other.Passes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Passes.Length, Passes[0]);

    /// <summary>A tempo on the straight way between two.</summary>
    internal static Tempo Between(Tempo from, Tempo to, double share) =>
        Tempo.TryOf(from.BeatsPerMinute + ((to.BeatsPerMinute - from.BeatsPerMinute) * share), out var tempo)
            ? tempo
            : to;

    private static Outcome<TempoPlan> Repeated(int times, Func<int, PassTempo> pass) =>
        times is >= 1 and <= MostPasses
            ? new TempoPlan([.. Enumerable.Range(0, times).Select(pass)])
            : new Fault(
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{times} times through"),
                "",
                $"1 to {MostPasses}"
            );
}
