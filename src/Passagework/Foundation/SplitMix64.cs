namespace Passagework.Foundation;

/// <summary>Repeatable chance: the same numbers from the same seed on every machine.</summary>
/// <remarks>SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", 2014).</remarks>
internal struct SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The top 53 bits of the next number as a number in [0, 1).</summary>
    public double NextUniform()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var mixed = _state;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            mixed ^= mixed >> 31;
            return (mixed >> 11) * (1.0 / (1UL << 53));
        }
    }
}
