using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Metre, bar lines, tempo and key that hold for the line.</summary>
internal sealed record MidiFrame
{
    private const int UsualMicroseconds = 500_000;
    private const double FastestBpm = 1000;

    public required int Division { get; init; }

    public required Meter Meter { get; init; }

    /// <summary>The first bar line, in ticks; before the beginning of the file where a pick-up stands there.</summary>
    public required long Origin { get; init; }

    /// <summary>Microseconds per quarter note; null when the file names no tempo.</summary>
    public int? Microseconds { get; init; }

    public MidiKey? Key { get; init; }

    public MidiRemark? Remark { get; init; }

    public double MsPerTick => (Microseconds ?? UsualMicroseconds) / 1000.0 / Division;

    /// <summary>Felt beats per minute with the fewest decimals that give the file's number.</summary>
    public double? TempoBpm
    {
        get
        {
            if (Microseconds is not { } micro)
            {
                return null;
            }

            var quarters = Meter.Beat.ToDouble() * 4;
            var exact = 60_000_000 / (micro * quarters);
            var places = 0;
            while (places < 6 && !Gives(Math.Round(exact, places), micro, quarters))
            {
                places++;
            }

            return Math.Round(exact, places);
        }
    }

    /// <summary>Time after the first bar line, as a fraction of a whole note, as played.</summary>
    public Fraction TimeOf(long tick) => Fraction.Of(tick - Origin, 4L * Division);

    /// <summary>Ticks after the first bar line of a played time.</summary>
    public double TicksOf(Fraction time) => time.ToDouble() * 4 * Division;

    /// <summary>Bar and felt beat, from 1; beats have at most two decimals.</summary>
    public string PlaceOf(Fraction time)
    {
        var bar = (time / Meter.Bar).Floor();
        var beat = (time.Modulo(Meter.Bar) / Meter.Beat).ToDouble() + 1;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"bar {bar + 1}, beat {Math.Floor(beat * 100) / 100}"
        );
    }

    public static MidiFrame Of(MidiChoice choice, MidiFindings findings)
    {
        var first = choice.Sounds.Min(sound => sound.Start);
        var meters = MidiMeters.Of(choice, findings);
        var tempi = choice.Frame.SelectMany(track => track.Tempi).OrderBy(tempo => tempo.Tick).ToList();
        var keys = choice.Frame.SelectMany(track => track.Keys).OrderBy(key => key.Tick).ToList();
        var frame = new MidiFrame
        {
            Division = choice.Division,
            Meter = meters.Meter,
            Origin = meters.Origin,
            Microseconds = tempi.Count > 0 ? Holding(tempi, tempo => tempo.Tick, first).Microseconds : null,
            Key = keys.Count > 0 ? Holding(keys, key => key.Tick, first).Key : null,
            Remark = choice.Frame.Select(track => track.Remark).FirstOrDefault(remark => remark is not null),
        };
        WarnOfChanges(
            frame,
            tempi.Select(tempo => tempo.Microseconds),
            keys.Select(key => key.Key),
            findings
        );
        return frame.Playable(findings);
    }

    // What holds at a tick; the first one where all come later.
    private static T Holding<T>(List<T> changes, Func<T, long> tickOf, long tick)
    {
        var at = changes.FindLastIndex(change => tickOf(change) <= tick);
        return changes[Math.Max(0, at)];
    }

    private static void WarnOfChanges(
        MidiFrame frame,
        IEnumerable<int> tempi,
        IEnumerable<MidiKey> keys,
        MidiFindings findings
    )
    {
        if (tempi.Any(tempo => tempo != frame.Microseconds))
        {
            findings.Warn("the tempo changes; the line keeps that of its first note");
        }

        if (keys.Any(key => key != frame.Key))
        {
            findings.Warn("the key signature changes; the line is spelled by that of its first note");
        }
    }

    private MidiFrame Playable(MidiFindings findings)
    {
        if (Microseconds is not { } micro || (micro > 0 && TempoBpm is > 0 and <= FastestBpm))
        {
            return this;
        }

        findings.Warn(
            string.Create(CultureInfo.InvariantCulture, $"a tempo of {micro} µs a quarter note is left out")
        );
        return this with { Microseconds = null };
    }

    private static bool Gives(double bpm, int micro, double quarters) =>
        (int)Math.Round(60_000_000 / Math.Max(1, bpm * quarters)) == micro;
}
