using Passagework.Sound.Strings;

namespace Passagework.Sound.Takes;

/// <summary>What a draw decides; each has numbers of its own, so that no part of a plan moves the draws of another.</summary>
internal enum TakeDraw
{
    Spread,
    Velocity,
    Missed,
    Wrong,
    WrongPlace,
    Extra,
    ExtraPlace,
    ExtraTime,
    Ring,
    RingLength,
}

/// <summary>Seeded chance by note and purpose.</summary>
internal readonly record struct TakeChance(ulong Seed)
{
    private const int Kinds = 16;
    private const int Parts = 12;

    /// <summary>Evenly from 0 to 1.</summary>
    public double Uniform(TakeDraw draw, int note) => (Draw(draw, note, 0) + 1) / 2;

    /// <summary>Normal, mean 0 and deviation 1: twelve even draws added, which never pass six.</summary>
    public double Normal(TakeDraw draw, int note)
    {
        var sum = 0.0;
        for (var part = 0; part < Parts; part++)
        {
            sum += Draw(draw, note, part);
        }

        return sum / 2;
    }

    private double Draw(TakeDraw draw, int note, int part) =>
        Noise.At(Seed, (((note * (long)Kinds) + (int)draw) * Parts) + part);
}
