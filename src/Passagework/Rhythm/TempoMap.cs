using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>A tempo from a moment on.</summary>
/// <param name="At">Musical time, as a fraction of a whole note after the first bar line.</param>
/// <param name="Tempo">Felt beats per minute from there on.</param>
/// <param name="Beat">Length of the felt beat as a fraction of a whole note, above 0.</param>
public readonly record struct TempoChange(Fraction At, Tempo Tempo, Fraction Beat);

/// <summary>The only bridge from musical time to seconds.</summary>
/// <remarks>Second 0 is musical time 0, the first bar line. Before the first change its tempo holds as well.</remarks>
public sealed class TempoMap
{
    private readonly ImmutableArray<TempoChange> _changes;
    private readonly ImmutableArray<double> _startSeconds;

    private TempoMap(ImmutableArray<TempoChange> changes)
    {
        _changes = changes;
        var starts = ImmutableArray.CreateBuilder<double>(changes.Length);
        var seconds = 0.0;
        for (var i = 0; i < changes.Length; i++)
        {
            seconds += i == 0 ? 0 : Seconds(changes[i].At - changes[i - 1].At, changes[i - 1]);
            starts.Add(seconds);
        }

        _startSeconds = starts.MoveToImmutable();
    }

    /// <summary>One tempo throughout.</summary>
    public static TempoMap Of(Tempo tempo, Meter meter) =>
        new([new TempoChange(Fraction.Zero, tempo, meter.Beat)]);

    /// <summary>Tempi that change at given moments.</summary>
    /// <param name="changes">Ascending, the first at 0.</param>
    /// <exception cref="ArgumentException">None, not from 0, not ascending, or a beat not above 0.</exception>
    public static TempoMap Of(ImmutableArray<TempoChange> changes)
    {
        var ascending = changes.Zip(changes.Skip(1)).All(pair => pair.First.At < pair.Second.At);
        if (changes.IsEmpty || changes[0].At != Fraction.Zero || !ascending)
        {
            throw new ArgumentException("Ascending moments, the first at 0.", nameof(changes));
        }

        if (changes.Any(change => change.Beat <= Fraction.Zero))
        {
            throw new ArgumentException("Beats of some length.", nameof(changes));
        }

        return new TempoMap(changes);
    }

    /// <summary>Seconds after the first bar line; negative before it.</summary>
    /// <param name="time">Musical time, as a fraction of a whole note after the first bar line.</param>
    public double SecondsAt(Fraction time)
    {
        var last = 0;
        for (var beyond = _changes.Length; beyond - last > 1; )
        {
            var middle = (last + beyond) / 2;
            (last, beyond) = _changes[middle].At <= time ? (middle, beyond) : (last, middle);
        }

        return _startSeconds[last] + Seconds(time - _changes[last].At, _changes[last]);
    }

    /// <summary>Musical time at that many seconds after the first bar line, in whole notes; undoes <see cref="SecondsAt"/>.</summary>
    public double WholeNotesAt(double seconds)
    {
        var last = 0;
        for (var beyond = _changes.Length; beyond - last > 1; )
        {
            var middle = (last + beyond) / 2;
            (last, beyond) = _startSeconds[middle] <= seconds ? (middle, beyond) : (last, middle);
        }

        var under = _changes[last];
        var beats = (seconds - _startSeconds[last]) / under.Tempo.BeatSeconds;
        return under.At.ToDouble() + (beats * under.Beat.ToDouble());
    }

    private static double Seconds(Fraction length, TempoChange under) =>
        (length / under.Beat).ToDouble() * under.Tempo.BeatSeconds;
}
