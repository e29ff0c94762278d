using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>
/// Chords above the bass, each voiced so that its tones move least from the one before, held where they begin and struck
/// short between the beats (common practice).
/// </summary>
internal sealed class ChordPart
{
    private const int Lowest = 54;
    private const int MostTones = 4;
    private ImmutableArray<int> _last = [];

    public IEnumerable<Hit> Beat(BandBeat beat, Division division, double chance)
    {
        var at = Fraction.Of(beat.Number);
        if (beat.IsChange)
        {
            _last = Voiced(beat.Chord);
            var held = division.Groove == Groove.Swung ? Fraction.Of(1, 2) : Fraction.One;
            return Struck(at, held, 0.7);
        }

        if (!division.HasLate)
        {
            return [];
        }

        return division.Groove switch
        {
            Groove.Shuffle => beat.IsBack ? Struck(at, Fraction.Of(1, 3), 0.6) : [],
            Groove.TwelveEight => beat.IsBack
                ? Struck(at + Fraction.Of(1, 3), Fraction.Of(1, 4), 0.45)
                    .Concat(Struck(at + division.Late, Fraction.Of(1, 4), 0.45))
                : [],
            _ => chance < 0.5 ? Struck(at + division.Late, Fraction.Of(1, 3), 0.55) : [],
        };
    }

    private IEnumerable<Hit> Struck(Fraction at, Fraction beats, double strength) =>
        [.. _last.Select(key => new Hit(at, beats, BandSound.Stab, key, strength))];

    private ImmutableArray<int> Voiced(Chord chord)
    {
        var classes = Classes(chord);
        var voicings = Enumerable
            .Range(0, classes.Length)
            .SelectMany(turn =>
                new[] { Lowest - 5, Lowest, Lowest + 5 }.Select(low => Stacked(classes, turn, low))
            );
        return voicings.MinBy(Moved);
    }

    // The fifth is left out first: it says least.
    private static ImmutableArray<int> Classes(Chord chord)
    {
        var degrees = chord.Kind.Degrees.Select(degree => degree.Semitones % 12).ToList();
        if (degrees.Count > MostTones)
        {
            degrees.Remove(7);
        }

        return
        [
            .. degrees
                .TakeLast(MostTones)
                .Select(semitones => (chord.Root.PitchClass + semitones) % 12)
                .Distinct()
                .Order(),
        ];
    }

    private static ImmutableArray<int> Stacked(ImmutableArray<int> classes, int turn, int low)
    {
        var keys = ImmutableArray.CreateBuilder<int>(classes.Length);
        for (var i = 0; i < classes.Length; i++)
        {
            var above = keys.Count == 0 ? low : keys[^1] + 1;
            keys.Add(above + WholeNumbers.Modulo(classes[(turn + i) % classes.Length] - above, 12));
        }

        return keys.ToImmutable();
    }

    private int Moved(ImmutableArray<int> keys) =>
        _last.IsEmpty
            ? Math.Abs(keys[0] - Lowest)
            : keys.Sum(key => _last.Min(old => Math.Abs(key - old))) + Math.Abs(keys[0] - _last[0]);
}
