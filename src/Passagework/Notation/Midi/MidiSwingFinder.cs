using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Recognizes swing: pairs of a beat, or of half a beat, at a steady ratio of long to short.</summary>
/// <remarks>
/// All figures are assumed by us. Three to one is left alone, for it is as well a dotted figure. Two to one is swing
/// unless the second third sounds somewhere, for then there are triplets.
/// </remarks>
internal sealed class MidiSwingFinder
{
    private const int FewestPairs = 4;
    private const double LeastShare = 0.54;
    private const double MostShare = 0.73;
    private const double Near = 0.03;
    private const double MostOdd = 0.1;
    private readonly double _pairTicks;
    private readonly List<double> _late = [];
    private readonly List<double> _odd = [];
    private int _even;

    private MidiSwingFinder(MidiFrame frame, IReadOnlyList<long> onsets, int notesPerBeat)
    {
        _pairTicks = frame.TicksOf(frame.Meter.Beat) * 2 / notesPerBeat;
        foreach (var onset in onsets)
        {
            Sort((onset - frame.Origin) / _pairTicks % 1);
        }
    }

    /// <summary>The swing of the onsets, with 2 or 4 notes a beat; null where there is none.</summary>
    public static MidiFeel? Find(MidiFrame frame, IReadOnlyList<long> onsets, MidiFindings findings)
    {
        if (frame.Meter.IsCompound)
        {
            return null;
        }

        foreach (var notesPerBeat in (ReadOnlySpan<int>)[2, 4])
        {
            if (new MidiSwingFinder(frame, onsets, notesPerBeat).Share() is not { } share)
            {
                continue;
            }

            var pair = notesPerBeat == 2 ? "beat" : "half beat";
            var ratio = share / (Fraction.One - share);
            findings.Warn(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"pairs of a {pair} are played {ratio.ToDouble():F2} to 1; written straight with swing {share}"
                )
            );
            return new MidiFeel(Swing.TryOf(share, out var swing) ? swing : default, notesPerBeat);
        }

        return null;
    }

    private void Sort(double place)
    {
        if (place is < Near or > 1 - Near)
        {
            _even++;
        }
        else if (place is > LeastShare and < MostShare)
        {
            _late.Add(place);
        }
        else
        {
            _odd.Add(place);
        }
    }

    private Fraction? Share()
    {
        if (_late.Count < FewestPairs || _even < FewestPairs)
        {
            return null;
        }

        var mean = _late.Average();
        var spread = Math.Sqrt(_late.Average(place => (place - mean) * (place - mean)));
        var triplets =
            Math.Abs(mean - (2.0 / 3)) < Near && _odd.Exists(place => Math.Abs(place - (1.0 / 3)) < Near);
        var odd = _odd.Count(place => !IsQuarter(place, mean));
        if (spread > Near || triplets || odd > MostOdd * (_late.Count + _even))
        {
            return null;
        }

        var unsure = Math.Max(0.5 / _pairTicks, 2 * spread / Math.Sqrt(_late.Count));
        return SimpleFraction.Within(mean - unsure, mean + unsure);
    }

    // Halves of the long and of the short note.
    private static bool IsQuarter(double place, double share) =>
        Math.Abs(place - (share / 2)) < Near || Math.Abs(place - ((1 + share) / 2)) < Near;
}
