using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>The whole library, engraved in several ways, keeps every rule of geometry.</summary>
public sealed class LibraryScoreTests
{
    private static readonly Lazy<IReadOnlyList<(string Id, Realization Played)>> Played = new(() =>
        [
            .. Library.All.Select(exercise =>
                (
                    exercise.Id,
                    Realizer.Realize(LineBuilder.Build(exercise.Recipe).OrThrow(), Player.At(2)).OrThrow()
                )
            ),
        ]
    );

    public static TheoryData<string> Ways => [.. Options.Keys];

    private static readonly Dictionary<string, ScoreOptions> Options = new()
    {
        ["as usual"] = new ScoreOptions(),
        ["all written out"] = new ScoreOptions
        {
            Strokes = ShownStrokes.All,
            Strings = true,
            Counting = CountedBars.All,
            StartBpm = 60,
            GoalBpm = 92,
        },
        ["narrow"] = new ScoreOptions { WidthMm = 80, Counting = CountedBars.All },
        ["wide and large"] = new ScoreOptions { WidthMm = 400, StaffMm = 9 },
        ["small"] = new ScoreOptions { StaffMm = 6 },
        ["staff"] = new ScoreOptions
        {
            Layout = ScoreLayout.Staff,
            Strings = true,
            StaffMm = 7.9,
        },
        ["tab"] = new ScoreOptions { Layout = ScoreLayout.Tab },
        ["tab with rhythm"] = new ScoreOptions
        {
            Layout = ScoreLayout.TabWithRhythm,
            Counting = CountedBars.All,
            Strokes = ShownStrokes.All,
        },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_exercise_keeps_every_rule(string way)
    {
        var options = Options[way];
        var broken = new List<string>();
        foreach (var (id, played) in Played.Value)
        {
            var score = ScoreEngraver.Engrave(played, options).OrThrow();
            broken.AddRange(ScoreRules.Broken(score, played, options).Select(rule => $"{id}: {rule}"));
        }

        Assert.Equal(82, Played.Value.Count);
        Offenders.AreNone(broken);
    }
}

/// <summary>All rules of a score at once.</summary>
internal static class ScoreRules
{
    public static IEnumerable<string> Broken(Score score, Realization played, ScoreOptions options)
    {
        var strings = played.Line.Recipe.Instrument.Tuning.StringCount;
        foreach (var system in score.Systems)
        {
            var rules = ScoreGeometry
                .Collisions(system)
                .Concat(ScoreGeometry.Outside(system))
                .Concat(ScoreGeometry.OffColumn(system))
                .Concat(ScoreGeometry.OffString(system, strings))
                .Concat(ScoreGeometry.Beams(system, score.SpaceMm))
                .Concat(Width(system, score, options));
            foreach (var rule in rules)
            {
                yield return rule;
            }
        }

        foreach (var name in ScoreGeometry.SharedNames(score))
        {
            yield return name;
        }

        var notes = score
            .Systems.SelectMany(system => system.Columns)
            .SelectMany(column => column.Heads)
            .Where(head => !head.TiedBack)
            .GroupBy(head => head.Note)
            .Select(group => (group.Key, group.Count()));
        if (!notes.SequenceEqual(played.Notes.Select((note, i) => (i, 1 + note.With.Length))))
        {
            yield return "notes are lost or out of order";
        }
    }

    // Every system but the last reaches the full width.
    private static IEnumerable<string> Width(ScoreSystem system, Score score, ScoreOptions options)
    {
        var full = Math.Abs(system.MusicEndMm - options.WidthMm) < 0.01;
        if (!full && system.Number < score.Systems.Length)
        {
            yield return $"system {system.Number} ends at {system.MusicEndMm} of {options.WidthMm} mm";
        }

        if (system.MusicEndMm > options.WidthMm + 0.01)
        {
            yield return $"system {system.Number} is too wide";
        }
    }
}
