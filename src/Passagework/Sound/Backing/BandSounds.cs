using Passagework.Sound.Mixing;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>The sounds of the backing, made when first asked for and kept. Not for several threads at once.</summary>
/// <remarks>All pitches and lengths are chosen by us.</remarks>
public sealed class BandSounds(int sampleRate)
{
    private const double BassSeconds = 2.5;
    private const double StabSeconds = 2;
    private readonly Dictionary<(BandSound, int), float[]> _made = [];

    /// <summary>Samples a second.</summary>
    public int SampleRate => sampleRate;

    /// <summary>One sound at full length.</summary>
    /// <param name="sound">Which.</param>
    /// <param name="key">The MIDI key; of no account for drums.</param>
    public float[] Of(BandSound sound, int key)
    {
        if (!_made.TryGetValue((sound, key), out var made))
        {
            made = sound switch
            {
                BandSound.Kick => DrumSounds.Kick(sampleRate),
                BandSound.Snare => DrumSounds.Snare(sampleRate),
                BandSound.Hat => DrumSounds.Cymbal(sampleRate, 0.07, 0.5),
                BandSound.Ride => DrumSounds.Cymbal(sampleRate, 0.5, 0.4),
                BandSound.Bass => Bass(EqualTemperament.FrequencyOf(key).Value),
                _ => Stab(EqualTemperament.FrequencyOf(key).Value),
            };
            _made[(sound, key)] = made;
        }

        return made;
    }

    // A plucked bass string from near its end: partials fall off and the high ones die first.
    private float[] Bass(double hertz)
    {
        var sound = new float[(int)(BassSeconds * sampleRate)];
        for (var partial = 1; partial <= 8; partial++)
        {
            Decay.Add(sound, partial * hertz, 0.3 / partial, BassSeconds / Math.Sqrt(partial), sampleRate);
        }

        Decay.Shape(sound, sampleRate / 500, sampleRate / 50);
        return sound;
    }

    // A struck bar with a soft hammer: few partials, a short bright one at the start.
    private float[] Stab(double hertz)
    {
        var sound = new float[(int)(StabSeconds * sampleRate)];
        Decay.Add(sound, hertz, 0.2, StabSeconds, sampleRate);
        Decay.Add(sound, 2 * hertz, 0.06, 0.6 * StabSeconds, sampleRate);
        Decay.Add(sound, 3 * hertz, 0.03, 0.4 * StabSeconds, sampleRate);
        Decay.Add(sound, 7 * hertz, 0.03, 0.1, sampleRate);
        Decay.Shape(sound, sampleRate / 500, sampleRate / 50);
        return sound;
    }
}
