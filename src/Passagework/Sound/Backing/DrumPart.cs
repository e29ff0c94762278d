using Passagework.Foundation;

namespace Passagework.Sound.Backing;

/// <summary>
/// Bass drum where a group of beats begins, snare on its last beat, cymbals between (common practice; the shares of
/// variation are chosen by us).
/// </summary>
internal static class DrumPart
{
    private const int PhraseBars = 4;

    public static IEnumerable<Hit> Beat(BandBeat beat, Division division, int bar, double chance)
    {
        var at = Fraction.Of(beat.Number);
        foreach (var (late, sound, strength) in Pattern(beat, division, chance))
        {
            if (late == Fraction.Zero || division.HasLate)
            {
                yield return new Hit(at + late, Fraction.Zero, sound, 0, strength);
            }
        }

        if (beat.IsLast && beat.IsBack && bar % PhraseBars == PhraseBars - 1 && division.HasLate)
        {
            yield return new Hit(at + division.Late, Fraction.Zero, BandSound.Snare, 0, 0.6);
        }
    }

    private static IEnumerable<(Fraction Late, BandSound Sound, double Strength)> Pattern(
        BandBeat beat,
        Division division,
        double chance
    )
    {
        var swung = division.Groove == Groove.Swung;
        if (beat.IsStart || swung)
        {
            yield return (Fraction.Zero, BandSound.Kick, swung ? 0.3 : 0.9);
        }

        if (beat.IsBack)
        {
            yield return swung ? (Fraction.Zero, BandSound.Hat, 0.7) : (Fraction.Zero, BandSound.Snare, 0.85);
        }

        foreach (var cymbal in Cymbals(beat, division))
        {
            yield return cymbal;
        }

        // A third of the beats get a note more: the bass drum runs into a group, the snare answers softly.
        if (chance < 1 / 3.0)
        {
            yield return beat.IsBack && !swung
                ? (division.Late, BandSound.Kick, 0.6)
                : (division.Late, BandSound.Snare, 0.2);
        }
    }

    private static IEnumerable<(Fraction Late, BandSound Sound, double Strength)> Cymbals(
        BandBeat beat,
        Division division
    )
    {
        var cymbal = division.Groove == Groove.Swung ? BandSound.Ride : BandSound.Hat;
        yield return (Fraction.Zero, cymbal, beat.IsStart ? 0.75 : 0.6);
        if (division.Groove == Groove.TwelveEight)
        {
            yield return (Fraction.Of(1, 3), cymbal, 0.4);
        }

        if (division.Groove != Groove.Swung || beat.IsBack)
        {
            yield return (division.Late, cymbal, 0.45);
        }
    }
}
