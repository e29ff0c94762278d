using Passagework.Exercises;

namespace Passagework.Sound.Performance;

/// <summary>When a string stops, and by what.</summary>
internal readonly record struct StringEnd(double Seconds, RingOver How);

/// <summary>
/// When the fretting hand leaves a string. The times of a finger's flight and roll are assumed by us; the rules are
/// in <c>docs/sound.md</c>.
/// </summary>
internal static class FingerRelease
{
    /// <summary>A finger that is needed elsewhere leaves this long before, at most a quarter of its note (assumed).</summary>
    private const double FlightSeconds = 0.025;
    private const double FlightShare = 0.25;
    private const double StaccatoShare = 0.5;
    private const double Instant = 1e-6;

    /// <summary>The end of one tone.</summary>
    /// <param name="note">Its note.</param>
    /// <param name="tone">The tone.</param>
    /// <param name="use">What is needed later.</param>
    /// <param name="silence">When the line next falls silent.</param>
    /// <param name="manner">How long notes are left sounding.</param>
    public static StringEnd Of(
        UnrolledNote note,
        PlayedTone tone,
        StringUse use,
        double silence,
        PlayingManner manner
    )
    {
        if (use.Slurs && use.String <= note.EndSeconds + Instant)
        {
            return new StringEnd(use.String, RingOver.Lift);
        }

        return manner switch
        {
            PlayingManner.Staccato => Lifted(
                Math.Min(use.String, note.OnsetSeconds + (StaccatoShare * Length(note)))
            ),
            PlayingManner.LetRing => Lifted(Math.Min(use.String, BeforeFlight(note, use.Leaves))),
            _ when tone.Finger == 0 => Lifted(Math.Min(use.String, silence)),
            _ => Plain(note, use),
        };
    }

    private static StringEnd Plain(UnrolledNote note, StringUse use)
    {
        if (use.Finger > note.EndSeconds + Instant)
        {
            return Lifted(Math.Min(use.String, note.EndSeconds));
        }

        return use.Rolls
            ? new StringEnd(use.Finger, RingOver.Roll)
            : Lifted(Math.Min(use.String, BeforeFlight(note, use.Finger)));
    }

    private static double BeforeFlight(UnrolledNote note, double needed)
    {
        var flight = Math.Min(FlightSeconds, FlightShare * Length(note));
        return Math.Max(needed - flight, note.OnsetSeconds + (FlightShare * Length(note)));
    }

    private static double Length(UnrolledNote note) => note.EndSeconds - note.OnsetSeconds;

    private static StringEnd Lifted(double seconds) => new(seconds, RingOver.Lift);
}
