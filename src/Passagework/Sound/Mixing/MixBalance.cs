namespace Passagework.Sound.Mixing;

/// <summary>Sets the voices of a mix beside one another and the whole to a loudness.</summary>
public static class MixBalance
{
    /// <summary>Loudness of a mix where nothing else is asked, in LUFS.</summary>
    public const double UsualLufs = -18;

    /// <summary>Voices are weighed by at most their first minute.</summary>
    private const int WeighedSeconds = 60;
    private const int Block = 4096;
    private const int Rounds = 4;
    private const double Near = 0.1;

    /// <summary>The same voices, levelled.</summary>
    /// <param name="mix">Voices at any level.</param>
    /// <param name="samples">How long the mix is.</param>
    /// <param name="sampleRate">Samples a second.</param>
    /// <param name="lufs">The loudness to reach; a mix of mere clicks may fall short of it under the ceiling.</param>
    public static Mixdown Level(Mixdown mix, long samples, int sampleRate, double lufs = UsualLufs)
    {
        var weighed = Math.Min(samples, (long)WeighedSeconds * sampleRate);
        var voices = mix.Voices.Select(voice => voice with { Gain = Gain(voice, weighed, sampleRate) });
        var levelled = new Mixdown([.. voices], mix.Channels);
        for (var round = 0; round < Rounds; round++)
        {
            if (Loudness(levelled.Render, levelled.Channels, samples, sampleRate) is not { } found)
            {
                return levelled;
            }

            if (Math.Abs(found - lufs) <= Near)
            {
                return levelled;
            }

            levelled = new Mixdown(levelled.Voices, mix.Channels, levelled.Gain * Ratio(lufs - found));
        }

        return levelled;
    }

    /// <summary>Integrated loudness in LUFS of what is rendered; null for silence.</summary>
    public static double? Loudness(VoiceRenderer render, int channels, long samples, int sampleRate)
    {
        var meter = new LoudnessMeter(sampleRate, channels);
        var block = new float[Block * channels];
        for (long done = 0; done < samples; done += Block)
        {
            var part = block.AsSpan(0, (int)Math.Min(Block, samples - done) * channels);
            render(part, done);
            meter.Add(part);
        }

        return meter.Integrated;
    }

    // Beside the guitar (chosen by us): a click's loudness is that of its short tones and the pauses between them.
    private static double Relative(MixPart part) =>
        part switch
        {
            MixPart.Guitar => 0,
            MixPart.Click => -7,
            MixPart.Backing => -3,
            _ => -10,
        };

    private static double Gain(MixVoice voice, long samples, int sampleRate) =>
        Loudness(voice.Render, 1, samples, sampleRate) is { } found
            ? Ratio(UsualLufs + Relative(voice.Part) - found)
            : voice.Gain;

    private static double Ratio(double decibels) => Math.Pow(10, decibels / 20);
}
