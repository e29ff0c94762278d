using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>The metre of the line and where its first bar line is.</summary>
/// <param name="Meter">The metre that holds at the first note.</param>
/// <param name="Origin">The first bar line, in ticks.</param>
internal readonly record struct MidiMeters(Meter Meter, long Origin)
{
    private const int MostPower = 4;

    public static MidiMeters Of(MidiChoice choice, MidiFindings findings)
    {
        var changes = choice.Frame.SelectMany(track => track.Meters).OrderBy(meter => meter.Tick).ToList();
        if (changes.Count == 0)
        {
            findings.Warn("no metre; taken as 4/4");
            return new MidiMeters(default, 0);
        }

        var first = choice.Sounds.Min(sound => sound.Start);
        var start = PickUpEnd(changes, choice.Division) ?? 0;
        var at = Math.Max(0, changes.FindLastIndex(change => change.Tick <= Math.Max(first, start)));
        var (tick, beats, power) = changes[at];
        if (MeterOf(beats, power) is not { } meter)
        {
            var written = Written(beats, power);
            findings.Warn($"a metre of {written} is none that a line can have; taken as 4/4");
            return new MidiMeters(default, tick);
        }

        if (changes.Exists(change => change.Tick > tick && (change.Beats, change.Power) != (beats, power)))
        {
            findings.Warn($"the metre changes; the line keeps {meter}");
        }

        // Whole bars of the metre lie between its own tick and the first bar line of the line.
        var bar = Math.Max(1, BarTicks(meter, choice.Division));
        var early = Math.Max(0, tick - first);
        return new MidiMeters(meter, tick - ((early + bar - 1) / bar * bar));
    }

    // A first metre that is followed by another before one bar of that one is over stands for a pick-up.
    private static long? PickUpEnd(List<(long Tick, int Beats, int Power)> changes, int division)
    {
        var next = changes.FindIndex(change => change.Tick > 0);
        return
            next > 0
            && MeterOf(changes[next].Beats, changes[next].Power) is { } meter
            && changes[next].Tick < BarTicks(meter, division)
            ? changes[next].Tick
            : null;
    }

    private static long BarTicks(Meter meter, int division) =>
        (meter.Bar * Fraction.Of(4L * division)).Floor();

    private static Meter? MeterOf(int beats, int power) =>
        power <= MostPower && Meter.TryParse(Written(beats, power), out var meter) ? meter : null;

    private static string Written(int beats, int power) =>
        power <= MostPower
            ? string.Create(CultureInfo.InvariantCulture, $"{beats}/{1 << power}")
            : string.Create(CultureInfo.InvariantCulture, $"{beats} over 2 to the power of {power}");
}
