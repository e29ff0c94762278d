using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>Takes drawn by chance: exercise, tempo, faults and conditions, each from its own list (values chosen by us).</summary>
public static class TakePlans
{
    private const double MissedChance = 0.04;
    private const double WrongChance = 0.04;
    private const double ExtraChance = 0.03;
    private const double FaultyShare = 0.6;

    /// <summary>On string 6 these lie on frets 1 to 10.</summary>
    private static readonly string[] Roots = ["F", "F#", "G", "Ab", "A", "Bb", "B", "C", "C#", "D"];

    private static readonly string[] Exercises =
    [
        "groups-of-three-up-and-down",
        "groups-of-five-up-and-down",
        "groups-of-six-up-and-down",
    ];

    /// <summary>The take of that seed.</summary>
    public static TakeIdea Random(uint seed)
    {
        var draws = new Draws(seed);
        var idea = new TakeIdea
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"random-{seed}"),
            About = "drawn by chance",
            Exercise = draws.OneOf(Exercises),
            Root = draws.OneOf(Roots),
            NotesPerBeat = draws.OneOf(3, 4),
            Guitar = draws.OneOf(Enum.GetValues<GuitarSound>()),
            Seed = seed,
            Plan = new TakePlan { AskedBpm = draws.OneOf<double>(80, 100, 120, 140, 160, 180) },
        };
        return idea with { Plan = Recorded(Slipped(Played(idea.Plan, draws), draws), draws) };
    }

    private static TakePlan Played(TakePlan plan, Draws draws)
    {
        var change = draws.OneOf<double>(0, 8, 15);
        return plan with
        {
            TempoRatio = draws.OneOf(1, 1, draws.Between(0.97, 1.03)),
            DriftPercent = draws.OneOf(0, 0, draws.Between(-4, 4)),
            SpreadMs = draws.OneOf<double>(0, 10, 20, 35),
            UpStrokeMs = draws.OneOf<double>(0, 6, 12),
            StringChangeMs = change,
            StringSkipMs = change,
            RingingShare = draws.OneOf(0, 0.25, 0.5),
            MeanVelocity = draws.OneOf<double>(75, 90, 105),
            VelocitySpread = draws.OneOf<double>(4, 10, 18),
            GroupAccent = draws.OneOf<double>(0, 15),
            LeadInSeconds = draws.Between(0.6, 1.2),
            LatencyMs = draws.Between(0, 250),
        };
    }

    private static TakePlan Slipped(TakePlan plan, Draws draws) =>
        draws.Between(0, 1) < FaultyShare
            ? plan with
            {
                MissedShare = MissedChance,
                WrongShare = WrongChance,
                ExtraShare = ExtraChance,
            }
            : plan;

    // White noise lies 3 dB below the sum that is asked for, and hum as much, so that both together reach it.
    private static TakePlan Recorded(TakePlan plan, Draws draws)
    {
        var noise = draws.OneOf<double>(40, 30, 20) + 3;
        TakePlan[] conditions =
        [
            plan,
            plan with
            {
                NoiseUnderDb = noise,
                HumUnderDb = noise,
            },
            plan with
            {
                RoomUnderDb = 10,
            },
            plan with
            {
                ClickUnderDb = 24,
            },
            plan with
            {
                OverloadDb = 9.5,
            },
            plan with
            {
                LevelDb = -30,
                NoiseUnderDb = 8,
            },
        ];
        return draws.OneOf(conditions);
    }

    private sealed class Draws(uint seed)
    {
        private SplitMix64 _chance = new(seed);

        public double Between(double least, double most) =>
            Math.Round(least + ((most - least) * _chance.NextUniform()), 4);

        public T OneOf<T>(params ReadOnlySpan<T> values) =>
            values[(int)(_chance.NextUniform() * values.Length)];
    }
}
