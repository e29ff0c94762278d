using System.Collections.Immutable;

namespace Passagework.Sound.Takes;

/// <summary>One number of a take plan: its name in files and messages, its range and how it is reached.</summary>
internal sealed record TakeNumber(
    string Name,
    double Least,
    double Most,
    Func<TakePlan, double?> Of,
    Func<TakePlan, double, TakePlan> With
);

/// <summary>One list of a take plan; each entry has the range.</summary>
internal sealed record TakeList(
    string Name,
    (double Least, double Most) Range,
    bool Whole,
    Func<TakePlan, IEnumerable<double>> Of,
    Func<TakePlan, IEnumerable<double>, TakePlan> With
);

/// <summary>All numbers of a take plan, read by its rules, its file and its equality.</summary>
internal static class TakeNumbers
{
    private const double MostLateMs = 200;
    private const double MostNotes = 100_000;

    public static ImmutableArray<TakeNumber> All { get; } =
    [
        new("askedBpm", 20, 400, p => p.AskedBpm, (p, v) => p with { AskedBpm = v }),
        new("tempoRatio", 0.25, 4, p => p.TempoRatio, (p, v) => p with { TempoRatio = v }),
        new("driftPercent", -50, 100, p => p.DriftPercent, (p, v) => p with { DriftPercent = v }),
        new("times", 1, 20, p => p.Times, (p, v) => p with { Times = (int)v }),
        new("spreadMs", 0, MostLateMs, p => p.SpreadMs, (p, v) => p with { SpreadMs = v }),
        Late("upStrokeMs", p => p.UpStrokeMs, (p, v) => p with { UpStrokeMs = v }),
        Late("stringChangeMs", p => p.StringChangeMs, (p, v) => p with { StringChangeMs = v }),
        Late("stringSkipMs", p => p.StringSkipMs, (p, v) => p with { StringSkipMs = v }),
        Late("shiftMs", p => p.ShiftMs, (p, v) => p with { ShiftMs = v }),
        Share("missedShare", p => p.MissedShare, (p, v) => p with { MissedShare = v }),
        Share("wrongShare", p => p.WrongShare, (p, v) => p with { WrongShare = v }),
        Share("extraShare", p => p.ExtraShare, (p, v) => p with { ExtraShare = v }),
        Share("ringingShare", p => p.RingingShare, (p, v) => p with { RingingShare = v }),
        new("ringLeastMs", 1, 5000, p => p.RingLeastMs, (p, v) => p with { RingLeastMs = v }),
        new("ringMostMs", 1, 5000, p => p.RingMostMs, (p, v) => p with { RingMostMs = v }),
        new("meanVelocity", 1, 127, p => p.MeanVelocity, (p, v) => p with { MeanVelocity = v }),
        new("velocitySpread", 0, 60, p => p.VelocitySpread, (p, v) => p with { VelocitySpread = v }),
        new("groupAccent", -60, 60, p => p.GroupAccent, (p, v) => p with { GroupAccent = v }),
        new("leadInSeconds", 0.2, 10, p => p.LeadInSeconds, (p, v) => p with { LeadInSeconds = v }),
        new("latencyMs", 0, 1000, p => p.LatencyMs, (p, v) => p with { LatencyMs = v }),
        new("tuningCents", -100, 100, p => p.TuningCents, (p, v) => p with { TuningCents = v }),
        new("levelDb", -80, 20, p => p.LevelDb, (p, v) => p with { LevelDb = v }),
        new("overloadDb", 0, 40, p => p.OverloadDb, (p, v) => p with { OverloadDb = v }),
        new("noiseUnderDb", 0, 100, p => p.NoiseUnderDb, (p, v) => p with { NoiseUnderDb = v }),
        new("humUnderDb", 0, 100, p => p.HumUnderDb, (p, v) => p with { HumUnderDb = v }),
        new("roomUnderDb", 0, 60, p => p.RoomUnderDb, (p, v) => p with { RoomUnderDb = v }),
        new("roomSeconds", 0.05, 5, p => p.RoomSeconds, (p, v) => p with { RoomSeconds = v }),
        new("clickUnderDb", 0, 60, p => p.ClickUnderDb, (p, v) => p with { ClickUnderDb = v }),
    ];

    public static ImmutableArray<TakeList> Lists { get; } =
    [
        new(
            "byPlaceMs",
            (-MostLateMs, MostLateMs),
            Whole: false,
            p => p.ByPlaceMs,
            (p, v) => p with { ByPlaceMs = [.. v] }
        ),
        Notes("missedNotes", p => p.MissedNotes, (p, v) => p with { MissedNotes = v }),
        Notes("wrongNotes", p => p.WrongNotes, (p, v) => p with { WrongNotes = v }),
        Notes("extraNotes", p => p.ExtraNotes, (p, v) => p with { ExtraNotes = v }),
    ];

    private static TakeNumber Late(
        string name,
        Func<TakePlan, double?> of,
        Func<TakePlan, double, TakePlan> with
    ) => new(name, -MostLateMs, MostLateMs, of, with);

    private static TakeNumber Share(
        string name,
        Func<TakePlan, double?> of,
        Func<TakePlan, double, TakePlan> with
    ) => new(name, 0, 1, of, with);

    private static TakeList Notes(
        string name,
        Func<TakePlan, ImmutableArray<int>> of,
        Func<TakePlan, ImmutableArray<int>, TakePlan> with
    ) =>
        new(
            name,
            (0, MostNotes),
            Whole: true,
            p => of(p).Select(note => (double)note),
            (p, v) => with(p, [.. v.Select(note => (int)note)])
        );
}
