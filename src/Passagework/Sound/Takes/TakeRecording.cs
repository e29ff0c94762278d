using Passagework.Sound.Strings;

namespace Passagework.Sound.Takes;

/// <summary>What room, microphone and converter make of a guitar: echo, click, noise, hum, level and clipping.</summary>
internal sealed class TakeRecording(TakePlan plan, int sampleRate, ulong seed)
{
    private const ulong NoiseSeed = 0xA5A5_0001;
    private const ulong EchoSeed = 0xA5A5_0002;
    private const double NoiseCornerHz = 800;
    private const double HumHz = 50;
    private const int HumPartials = 5;
    private const double EchoCornerHz = 5000;
    private const double EchoesASecond = 2000;
    private const double EchoBeginsSeconds = 0.005;
    private const double FrameSeconds = 0.02;
    private const double ActiveShare = 1e-4;

    /// <summary>Below the string model, so that single lines struck as hard as it goes stay below full scale.</summary>
    private const double HeadroomDb = 6;

    /// <summary>Changes the guitar's samples into those of the recording.</summary>
    /// <param name="samples">The guitar alone.</param>
    /// <param name="click">Adds the click to samples of the same length; called only where the plan has one.</param>
    public TakeLevel Record(float[] samples, Action<float[]> click)
    {
        Samples.Scale(samples, Ratio(plan.LevelDb - HeadroomDb));
        var (active, peak) = (ActiveRms(samples), Samples.Peak(samples));
        if (plan.RoomUnderDb is { } room)
        {
            Samples.Add(ToRms(Echo(samples), Rms(samples) * Ratio(-room)), samples);
        }

        if (plan.ClickUnderDb is { } under)
        {
            var clicks = new float[samples.Length];
            click(clicks);
            Samples.Add(clicks, samples, peak * Ratio(-under) / Samples.Peak(clicks));
        }

        if (plan.NoiseUnderDb is { } noise)
        {
            Samples.Add(ToRms(RoomNoise(samples.Length), active * Ratio(-noise)), samples);
        }

        if (plan.HumUnderDb is { } hum)
        {
            Samples.Add(ToRms(Hum(samples.Length), active * Ratio(-hum)), samples);
        }

        var gain = plan.OverloadDb is { } over ? Ratio(over) / Samples.Peak(samples) : 1;
        Samples.Scale(samples, gain);
        return new TakeLevel(20 * Math.Log10(active * gain), Clip(samples));
    }

    /// <summary>RMS over the frames of 20 ms within 40 dB of the loudest one.</summary>
    private double ActiveRms(float[] samples)
    {
        var frame = (int)(FrameSeconds * sampleRate);
        var powers = Enumerable
            .Range(0, samples.Length / frame)
            .Select(i => Math.Pow(Rms(samples.AsSpan(i * frame, frame)), 2))
            .ToList();
        var loudest = powers.Max();
        return Math.Sqrt(powers.Where(power => power >= ActiveShare * loudest).Average());
    }

    // Single echoes of either sign, thick enough to be heard as noise that dies away (velvet noise: Karjalainen &
    // Järveläinen, "Reverberation modeling using velvet noise", AES 30th Conference, 2007; from memory).
    private float[] Echo(float[] dry)
    {
        var echo = new float[dry.Length];
        var count = (int)(plan.RoomSeconds * EchoesASecond);
        for (var i = 0; i < count; i++)
        {
            var chance = (Noise.At(seed ^ EchoSeed, i) + 1) / 2;
            var seconds = EchoBeginsSeconds + ((i + chance) / EchoesASecond);
            var at = (int)(seconds * sampleRate);
            var sign = Noise.At(seed ^ EchoSeed, count + i) < 0 ? -1 : 1;
            if (at < dry.Length)
            {
                var gain = sign * Ratio(-60 * seconds / plan.RoomSeconds);
                Samples.Add(dry.AsSpan(0, dry.Length - at), echo.AsSpan(at), gain);
            }
        }

        Biquad.LowPass(EchoCornerHz, Math.Sqrt(0.5), sampleRate).Run(echo);
        return echo;
    }

    private float[] RoomNoise(int length)
    {
        var noise = new float[length];
        var share = (float)(1 - Math.Exp(-Math.Tau * NoiseCornerHz / sampleRate));
        var last = 0f;
        for (var i = 0; i < length; i++)
        {
            last += share * (Noise.At(seed ^ NoiseSeed, i) - last);
            noise[i] = last;
        }

        return noise;
    }

    private float[] Hum(int length)
    {
        var hum = new float[length];
        for (var i = 0; i < length; i++)
        {
            for (var n = 1; n <= HumPartials; n++)
            {
                hum[i] += (float)(Math.Sin(Math.Tau * HumHz * n * i / sampleRate) / n);
            }
        }

        return hum;
    }

    private static double Clip(float[] samples)
    {
        var cut = 0L;
        foreach (ref var sample in samples.AsSpan())
        {
            cut += Math.Abs(sample) > 1 ? 1 : 0;
            sample = Math.Clamp(sample, -1, 1);
        }

        return cut / (double)samples.Length;
    }

    private static float[] ToRms(float[] samples, double rms)
    {
        Samples.Scale(samples, (float)(rms / Rms(samples)));
        return samples;
    }

    private static double Rms(ReadOnlySpan<float> samples)
    {
        var sum = 0.0;
        foreach (var sample in samples)
        {
            sum += (double)sample * sample;
        }

        return Math.Sqrt(sum / samples.Length);
    }

    private static float Ratio(double decibels) => (float)Math.Pow(10, decibels / 20);
}
