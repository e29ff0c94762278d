namespace Passagework.Theory;

/// <summary>Frequencies of MIDI keys, twelve equal steps to the octave, A4 = key 69 = 440 Hz.</summary>
/// <remarks>Standard tuning frequency: ISO 16:1975.</remarks>
public static class EqualTemperament
{
    private const double StandardHertz = 440;
    private const int StandardKey = 69;

    /// <summary>The frequency of a key; fractions of a key are parts of a semitone.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency would not be finite.</exception>
    public static Hertz FrequencyOf(double midi) =>
        Hertz.Of(StandardHertz * Math.Pow(2, (midi - StandardKey) / 12));

    /// <summary>The key of a frequency; null for silence.</summary>
    public static double? KeyOf(Hertz frequency) =>
        frequency.Value > 0 ? StandardKey + (12 * Math.Log2(frequency.Value / StandardHertz)) : null;
}
