using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>What the fretting hand does, counted.</summary>
public sealed record FrettingCounts
{
    /// <summary>Moves of one finger to the same fret of a neighbouring string.</summary>
    public int Rolls { get; private init; }

    /// <summary>Other moves of one finger to another place.</summary>
    public int SameFingerMoves { get; private init; }

    /// <summary>Changes of position.</summary>
    public int Shifts { get; private init; }

    /// <summary>Most frets from the lowest to the highest fretted note while the hand stays in one position.</summary>
    public int Stretch { get; private init; }

    /// <summary>Share of the fretted notes that each finger plays, first finger first; all 0 when nothing is fretted.</summary>
    public ImmutableArray<double> FingerShare { get; private init; } = [0, 0, 0, 0];

    /// <summary>e to the entropy of the shares: 1 when one finger does everything (or nothing is fretted), 4 when all share alike.</summary>
    public double EffectiveFingers { get; private init; } = 1;

    internal static FrettingCounts Of(Fingering fingering)
    {
        var notes = fingering.Notes;
        var shares = SharesOf(notes);
        var (rolls, sameFinger, shifts) = (0, 0, 0);
        for (var i = 1; i < notes.Length; i++)
        {
            var (from, to) = (notes[i - 1], notes[i]);
            shifts += from.Position != to.Position ? 1 : 0;
            var (rolled, moved) = SameFinger(from, to);
            rolls += rolled;
            sameFinger += moved;
        }

        return new FrettingCounts
        {
            Rolls = rolls,
            SameFingerMoves = sameFinger,
            Shifts = shifts,
            Stretch = StretchOf(notes),
            FingerShare = shares,
            EffectiveFingers = EffectiveOf(shares.AsSpan()),
        };
    }

    /// <summary>e to the entropy of shares; 1 when all are 0.</summary>
    internal static double EffectiveOf(ReadOnlySpan<double> shares)
    {
        var entropy = 0.0;
        foreach (var share in shares)
        {
            entropy -= share > 0 ? share * Math.Log(share) : 0;
        }

        return Math.Exp(entropy);
    }

    private static int StretchOf(ImmutableArray<FingeredNote> notes)
    {
        var (stretch, lowest, highest, position) = (0, 0, 0, 0);
        foreach (var note in notes)
        {
            foreach (var tone in note.Tones.Where(tone => tone.Finger > 0))
            {
                var stays = note.Position == position;
                lowest = stays ? Math.Min(lowest, tone.Place.Fret) : tone.Place.Fret;
                highest = stays ? Math.Max(highest, tone.Place.Fret) : tone.Place.Fret;
                (stretch, position) = (Math.Max(stretch, highest - lowest), note.Position);
            }
        }

        return stretch;
    }

    // Fingers that roll, and those that go to another place otherwise.
    private static (int Rolled, int Moved) SameFinger(FingeredNote from, FingeredNote to)
    {
        if (from.Form is null && to.Form is null)
        {
            var stays = from.Finger != to.Finger || to.Finger == 0 || from.Place == to.Place;
            var rolls = !stays && IsRoll(from.Place, to.Place);
            return (rolls ? 1 : 0, stays || rolls ? 0 : 1);
        }

        var (rolled, moved) = (0, 0);
        foreach (var finger in to.Tones.Where(tone => tone.Finger > 0).GroupBy(tone => tone.Finger))
        {
            var before = from.Tones.Where(tone => tone.Finger == finger.Key).ToList();
            if (before.Count > 0 && !finger.Any(before.Contains))
            {
                var rolls = finger.Any(tone => before.Exists(other => IsRoll(other.Place, tone.Place)));
                rolled += rolls ? 1 : 0;
                moved += rolls ? 0 : 1;
            }
        }

        return (rolled, moved);
    }

    private static bool IsRoll(Place from, Place to) =>
        from.Fret == to.Fret && Math.Abs(from.String - to.String) == 1;

    private static ImmutableArray<double> SharesOf(ImmutableArray<FingeredNote> notes)
    {
        var counts = new double[4];
        foreach (var note in notes)
        {
            if (note.Form is null && note.Finger > 0)
            {
                counts[note.Finger - 1]++;
            }

            foreach (var tone in note.Form?.Held ?? [])
            {
                counts[tone.Finger - 1]++;
            }
        }

        var fretted = counts.Sum();
        return fretted == 0 ? [0, 0, 0, 0] : [.. counts.Select(count => count / fretted)];
    }
}
