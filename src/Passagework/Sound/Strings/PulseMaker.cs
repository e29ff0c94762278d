namespace Passagework.Sound.Strings;

/// <summary>Turns a stroke into the pulse it sends into its string.</summary>
internal static class PulseMaker
{
    /// <summary>Share of the rounding that lies before the stroke's time, so that the sound is there at the time.</summary>
    public const double Lead = 0.25;

    private const double PalmSoftness = 1.8;
    private const double NoiseSeconds = 0.0012;

    /// <summary>Samples of the rounding; harder strokes let go quicker, a resting hand slower.</summary>
    public static double Width(Contact contact, StringEvent note, Voicing voicing, int sampleRate)
    {
        var palm = note.PalmMuted ? PalmSoftness : 1;
        return contact.Milliseconds
            / 1000
            * palm
            * voicing.Softness
            * (1.56 - (0.8 * note.Strength))
            * sampleRate;
    }

    /// <summary>The pulse of a stroke on a string with that period.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="voicing">The instrument.</param>
    /// <param name="open">The open string's key.</param>
    /// <param name="period">Samples of a period.</param>
    /// <param name="noise">Chooses the noise, and gives the rate.</param>
    public static Pulse Of(
        Stroke stroke,
        Voicing voicing,
        double open,
        double period,
        (ulong Seed, int SampleRate) noise
    )
    {
        var note = stroke.Event;
        var contact = stroke.Contact;
        var width = Width(contact, note, voicing, noise.SampleRate);
        var loudness = note.Strength * Math.Sqrt(note.Strength);
        return new()
        {
            Start = stroke.Start - (Lead * width),
            Period = period,
            Share = Share(stroke, voicing, open),
            Width = width,
            Height = contact.Height * loudness,
            NoiseHeight = contact.Noise * loudness * voicing.Noise,
            NoiseLength = NoiseSeconds * noise.SampleRate,
            Seed = unchecked(noise.Seed + ((ulong)(stroke.Ordinal + 1) * 0xD1B54A32D192ED03UL)),
        };
    }

    private static double Share(Stroke stroke, Voicing voicing, double open)
    {
        var note = stroke.Event;
        if (note.Action is StringAction.PullOff && stroke.KeyBefore is { } before)
        {
            // Plucked where the finger was, seen from the string's other end.
            return Math.Clamp(1 - Math.Exp(-Math.Abs(before - note.Key) * Math.Log(2) / 12), 0.05, 0.5);
        }

        if (Contact.IsSlur(note.Action) && stroke.Contact.Height < 0.9)
        {
            return 0.35;
        }

        var place = (note.Position ?? voicing.Position) * stroke.Contact.Place;
        return Math.Clamp(place * Math.Exp((note.Key - open) * Math.Log(2) / 12), 0.02, 0.5);
    }
}
