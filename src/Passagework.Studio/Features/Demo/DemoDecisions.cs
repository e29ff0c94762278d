using System.Collections.Immutable;
using Passagework.Studio.Features.Choosing;

namespace Passagework.Studio.Features.Demo;

/// <summary>A choice that the demo's teacher kept, with the answer that the question really got.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Exercise">Key of the exercise that came first.</param>
/// <param name="Title">Its title.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reason">The teacher's own words.</param>
internal sealed record DemoDecision(
    Asked Question,
    string Exercise,
    string Title,
    string Verdict,
    string Reason
);

/// <summary>The demo's choices; a test asks each question anew and holds the answer to what stands here.</summary>
internal static class DemoDecisions
{
    /// <summary>The latest last.</summary>
    public static IReadOnlyList<DemoDecision> All { get; } = [ForBram(), ForIsolde()];

    private static DemoDecision ForBram() =>
        new(
            new Asked
            {
                Level = 0,
                Minutes = 10,
                Purpose = "the first weeks, before there is a piece",
                Picked = ["groups-of-three", "reversed-threes", "slurred-threes", "out-and-back-fours"],
                Weights = Weights(even: 100, general: 60, power: 20, music: 40, ambiguity: 0),
            },
            "groups-of-three-up-and-down",
            "Groups of three",
            "First, fairly clearly: groups of three. Next: threes turned round.",
            "Bram hears threes in the tunes he likes. The ones turned round can wait."
        );

    private static DemoDecision ForIsolde() =>
        new(
            new Asked
            {
                Level = 2,
                Minutes = 10,
                Purpose = "before the run in bar 12 of Low Water",
                Picked = ["groups-of-three", "groups-of-four", "groups-of-five"],
                Weights = Weights(even: 60, general: 100, power: 45, music: 70, ambiguity: 25),
            },
            "groups-of-five-up-and-down",
            "Groups of five",
            "First by the figures: groups of five; but there is no clear difference between this and groups of four, which is next.",
            "Isolde has played fours since spring. No clear difference, so the ones that are new to her."
        );

    private static ImmutableSortedDictionary<string, int> Weights(
        int even,
        int general,
        int power,
        int music,
        int ambiguity
    ) =>
        new Dictionary<string, int>
        {
            ["even-load"] = even,
            ["general-use"] = general,
            ["staying-power"] = power,
            ["use-in-music"] = music,
            ["rhythmic-ambiguity"] = ambiguity,
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
