namespace Passagework.Sound.Strings;

/// <summary>Noise as a pure function of seed and sample, so that any stretch can be made on its own.</summary>
internal static class Noise
{
    /// <summary>A value from −1 to 1; the mixing step of a published 64-bit generator (Steele, Lea &amp; Flood 2014).</summary>
    public static float At(ulong seed, long sample)
    {
        unchecked
        {
            var z = seed + ((ulong)sample * 0x9E3779B97F4A7C15UL);
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            z ^= z >> 31;
            return ((z >> 40) * (2f / (1 << 24))) - 1;
        }
    }
}
