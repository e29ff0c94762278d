using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How groups of equal length lie against the beat and the bar.</summary>
/// <remarks>
/// Group k starts at pulse offset + k × length. Labels after H. Krebs, Fantasy Pieces, 1999, ch. 2: <c>cons</c> where
/// one layer divides the other; <c>G5/4</c> a grouping dissonance, the larger first; <c>D4+1</c> layers that would nest
/// but are out of phase, named by the smaller, which is the one out of phase.
/// </remarks>
public sealed record Alignment
{
    private readonly int _group;
    private readonly int _perBeat;
    private readonly int _perBar;
    private readonly int _offset;

    private Alignment(int group, int perBeat, int beatsPerBar, int offset)
    {
        _group = group;
        _perBeat = perBeat;
        _perBar = perBeat * beatsPerBar;
        _offset = offset;
    }

    /// <summary>Pulses until a group starts at the same place in the beat again.</summary>
    public long CyclePulses => WholeNumbers.Lcm(_group, _perBeat);

    /// <summary>Beats until a group starts at the same place in the beat again.</summary>
    public long CycleBeats => CyclePulses / _perBeat;

    /// <summary>Bars until a group starts at the same place in the bar again.</summary>
    public long Bars => _group / WholeNumbers.Gcd(_group, _perBar);

    /// <summary>Different places in the bar where groups start.</summary>
    public long PlacesInBar => _perBar / WholeNumbers.Gcd(_group, _perBar);

    /// <summary>Places in the beat, in pulses, where successive groups start; one cycle.</summary>
    public ImmutableArray<int> Starts =>
        [
            .. Enumerable
                .Range(0, (int)(CyclePulses / _group))
                .Select(k => (int)((_offset + ((long)k * _group)) % _perBeat)),
        ];

    /// <summary>Share of the groups that start on a beat.</summary>
    public Fraction OnBeat => ShareOn(_perBeat);

    /// <summary>Share of the groups that start on a downbeat.</summary>
    public Fraction OnDownbeat => ShareOn(_perBar);

    /// <summary>How the groups sound against the beat: <c>cons</c>, <c>G5/4</c> or <c>D4+1</c>.</summary>
    public string Label
    {
        get
        {
            var (small, large) = (Math.Min(_group, _perBeat), Math.Max(_group, _perBeat));
            if (large % small != 0)
            {
                return FormattableString.Invariant($"G{large}/{small}");
            }

            var late = _offset % small;
            return late == 0 ? "cons" : FormattableString.Invariant($"D{small}+{late}");
        }
    }

    /// <summary>Groups of one length in a metre.</summary>
    /// <param name="group">Pulses in a group, at least 1.</param>
    /// <param name="perBeat">Pulses in a beat, at least 1.</param>
    /// <param name="beatsPerBar">Beats in a bar, at least 1.</param>
    /// <param name="offset">Pulse at which the first group starts, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static Alignment Of(int group, int perBeat, int beatsPerBar, int offset = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(group, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(perBeat, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(beatsPerBar, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        return new Alignment(group, perBeat, beatsPerBar, offset);
    }

    private Fraction ShareOn(int layer)
    {
        var shared = WholeNumbers.Gcd(_group, layer);
        return _offset % shared == 0 ? Fraction.Of(shared, layer) : Fraction.Zero;
    }
}
