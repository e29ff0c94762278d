using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

/// <summary>Values of rhythm from their written form, for tests.</summary>
internal static class Beats
{
    public static Meter Meter(string text) =>
        Passagework.Rhythm.Meter.TryParse(text, out var meter)
            ? meter
            : throw new ArgumentException(text, nameof(text));

    public static Fraction Fraction(string text) =>
        Passagework.Foundation.Fraction.TryParse(text, out var fraction)
            ? fraction
            : throw new ArgumentException(text, nameof(text));

    public static Swing Swing(string share) =>
        Passagework.Rhythm.Swing.TryOf(Fraction(share), out var swing)
            ? swing
            : throw new ArgumentException(share, nameof(share));

    public static Tempo Tempo(double bpm) =>
        Passagework.Rhythm.Tempo.TryOf(bpm, out var tempo)
            ? tempo
            : throw new ArgumentException("Out of range.", nameof(bpm));

    /// <summary>Groups of as many notes as pulses, accented on their starts.</summary>
    public static GroupShape[] Groups(params int[] lengths) => [.. lengths.Select(length => Group(length))];

    public static GroupShape Group(int length, params int[] accents) =>
        new(
            Passagework.Foundation.Fraction.Of(length),
            length,
            [.. accents.Select(accent => Passagework.Foundation.Fraction.Of(accent))]
        );
}
