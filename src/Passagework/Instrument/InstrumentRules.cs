using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>The ranges of an instrument's values, with JSON paths. Limits in millimetres are assumed by us.</summary>
internal static class InstrumentRules
{
    private const int LowestOpenKey = 12;
    private const int HighestOpenKey = 88;

    public static Fault? Check(Fretboard fretboard) =>
        OpenStrings(fretboard.Tuning)
        ?? Bounds.Within(fretboard.Frets, 12, 36, "$.instrument.frets")
        ?? Bounds.Within(fretboard.Capo, 0, 12, "$.instrument.capo")
        ?? ScaleLengths(fretboard)
        ?? Spacing(fretboard.NutSpacingMm, "$.instrument.stringSpacingMm[0]")
        ?? Spacing(fretboard.BridgeSpacingMm, "$.instrument.stringSpacingMm[1]");

    private static Fault? OpenStrings(Tuning tuning)
    {
        for (var number = 1; number <= tuning.StringCount; number++)
        {
            var open = tuning.Open(number);
            if (open.Midi is < LowestOpenKey or > HighestOpenKey)
            {
                return new Fault(
                    $"string {number} cannot be tuned to {open}",
                    "$.instrument.tuning",
                    "C0 to E6"
                );
            }
        }

        return null;
    }

    private static Fault? ScaleLengths(Fretboard fretboard)
    {
        var lengths = fretboard.ScaleLengthsMm;
        var strings = fretboard.Tuning.StringCount;
        const string Where = "$.instrument.scaleLengthMm";
        return lengths.Length <= 1 || lengths.Length == strings
            ? Bounds.Each(lengths, (length, _) => Millimetres(length, 200, 1500, Where))
            : new Fault($"has {lengths.Length} lengths", Where, $"one, or one for each of {strings} strings");
    }

    private static Fault? Spacing(double? spacing, string where) =>
        spacing is { } mm ? Millimetres(mm, 2, 40, where) : null;

    private static Fault? Millimetres(double mm, double least, double most, string where) =>
        mm >= least && mm <= most ? null : new Fault("out of range", where, $"{least} to {most} mm");
}
