using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>One tone of a chord with the finger that holds it.</summary>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">1 to 4; 0 for an open string.</param>
public readonly record struct FingeredTone(Place Place, int Finger);

/// <summary>How the fingers hold a chord.</summary>
internal sealed class FretForm
{
    private readonly Demand _effort;

    /// <summary>A form of these tones.</summary>
    /// <param name="tones">From high to low; the first is the note that the line counts.</param>
    /// <param name="span">The hand.</param>
    public FretForm(ImmutableArray<FingeredTone> tones, HandSpan span)
    {
        Tones = tones;
        Held = [.. tones.Where(tone => tone.Finger > 0)];
        _effort = EffortOf(Held, span);
    }

    /// <summary>All tones, from high to low.</summary>
    public ImmutableArray<FingeredTone> Tones { get; }

    /// <summary>The fretted tones.</summary>
    public ImmutableArray<FingeredTone> Held { get; }

    /// <summary>What holding it takes, in ms; parts forms that are otherwise alike.</summary>
    public double EffortMs(double[] basis) => _effort.At(basis);

    /// <summary>Frets that all fingers together stand off their natural places with the hand at a position.</summary>
    public int DeviationAt(int position) => Held.Sum(tone => Math.Abs(StateOf(tone, position).Deviation));

    /// <summary>
    /// Where the hand may stand: every finger at most a fret off its natural place and the first not beyond it; where no
    /// such position is, the one with the least deviation.
    /// </summary>
    public IEnumerable<int> Positions()
    {
        var range = Enumerable.Range(1, Held.Max(tone => tone.Place.Fret)).ToList();
        var near = range.Where(position => Held.All(tone => IsNear(StateOf(tone, position)))).ToList();
        return near.Count > 0 ? near : [range.MinBy(DeviationAt)];
    }

    private static bool IsNear(FretState state) =>
        state.Deviation >= -1 && state.Deviation <= (state.Finger == 1 ? 0 : 1);

    private static FretState StateOf(FingeredTone tone, int position) =>
        new(tone.Place, tone.Finger, position);

    // Stretch of each pair, half a roll for each further string under one finger, a tenth of a press for each finger.
    private static Demand EffortOf(ImmutableArray<FingeredTone> held, HandSpan span)
    {
        var fingers = held.Select(tone => tone.Finger).Distinct().Count();
        var stretches = 0.0;
        for (var i = 0; i < held.Length; i++)
        {
            for (var j = i + 1; j < held.Length; j++)
            {
                if (held[i].Finger != held[j].Finger)
                {
                    var factor = span.StretchFactor(StateOf(held[i], 1), StateOf(held[j], 1));
                    stretches += (factor ?? 1) - 1;
                }
            }
        }

        return Demand
            .Of(Basis.Press, stretches + (HandConstants.FormFingerShare * fingers))
            .Plus(Basis.Roll, HandConstants.BarredStringShare * (held.Length - fingers));
    }
}
