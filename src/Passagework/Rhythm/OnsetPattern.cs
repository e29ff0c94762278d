using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Which pulses of a repeating cycle are struck: the accents or group starts of a line, not all its notes.</summary>
/// <remarks>In an unbroken run every pulse has a note, and every measure of syncopation would be nothing.</remarks>
public sealed record OnsetPattern
{
    private OnsetPattern(int pulses, ImmutableArray<int> onsets)
    {
        Pulses = pulses;
        Onsets = onsets;
    }

    /// <summary>Pulses in the cycle.</summary>
    public int Pulses { get; }

    /// <summary>Struck pulses, ascending; at least one.</summary>
    public ImmutableArray<int> Onsets { get; }

    /// <summary>A cycle with those onsets.</summary>
    /// <exception cref="ArgumentException">None, not ascending, or outside the cycle.</exception>
    public static OnsetPattern Of(int pulses, params ImmutableArray<int> onsets)
    {
        var ascending = onsets.Zip(onsets.Skip(1)).All(pair => pair.First < pair.Second);
        if (onsets.IsEmpty || onsets[0] < 0 || onsets[^1] >= pulses || !ascending)
        {
            throw new ArgumentException("Ascending pulses of the cycle, at least one.", nameof(onsets));
        }

        return new OnsetPattern(pulses, onsets);
    }

    /// <summary>The starts of groups, passed through again and again until a pass begins on a downbeat.</summary>
    /// <param name="groups">Pulses of each group of a pass, at least 1 each.</param>
    /// <param name="barPulses">Pulses in the bar, at least 1.</param>
    /// <exception cref="ArgumentException">No groups, a length below 1, or a cycle of more than a million pulses.</exception>
    public static OnsetPattern OfGroups(ImmutableArray<int> groups, int barPulses)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(barPulses, 1);
        var pass = groups.Sum(length => (long)length);
        if (groups.IsEmpty || groups.Any(length => length < 1))
        {
            throw new ArgumentException("At least one group, of at least one pulse each.", nameof(groups));
        }

        var cycle = WholeNumbers.Lcm(pass, barPulses);
        if (cycle > 1_000_000)
        {
            throw new ArgumentException("A cycle of at most a million pulses.", nameof(groups));
        }

        var onsets = ImmutableArray.CreateBuilder<int>();
        for (var (at, k) = (0, 0); at < cycle; at += groups[k % groups.Length], k++)
        {
            onsets.Add(at);
        }

        return new OnsetPattern((int)cycle, onsets.ToImmutable());
    }

    /// <summary>The same onsets that many pulses later, wrapped around the cycle.</summary>
    public OnsetPattern Displaced(int pulses) =>
        new(Pulses, [.. Onsets.Select(onset => WholeNumbers.Modulo(onset + pulses, Pulses)).Order()]);

    /// <summary>Share of the onsets that fall on a beat.</summary>
    /// <param name="beatPulses">Pulses in a beat, at least 1.</param>
    public Fraction OnBeat(int beatPulses)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(beatPulses, 1);
        return Fraction.Of(Onsets.Count(onset => onset % beatPulses == 0), Onsets.Length);
    }

    /// <summary>Pulses from each onset to the next; the last one's to the first of the next cycle.</summary>
    public ImmutableArray<int> Gaps() =>
        [
            .. Onsets.Select(
                (onset, i) => (i + 1 < Onsets.Length ? Onsets[i + 1] : Onsets[0] + Pulses) - onset
            ),
        ];

    /// <summary>Content equality.</summary>
    public bool Equals(OnsetPattern? other) =>
        other is not null && Pulses == other.Pulses && Onsets.SequenceEqual(other.Onsets);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Pulses, Onsets.Length);
}
