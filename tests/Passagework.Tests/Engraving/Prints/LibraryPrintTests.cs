using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>The whole library, shown with everything on one picture or on pages, keeps every rule of geometry.</summary>
public sealed class LibraryPrintTests
{
    private static readonly Dictionary<string, PrintOptions> Options = new()
    {
        ["as usual"] = new PrintOptions(),
        ["all written out, too fast"] = new PrintOptions
        {
            TempoBpm = 200,
            Music = new ScoreOptions
            {
                Strokes = ShownStrokes.All,
                Strings = true,
                Counting = CountedBars.All,
            },
        },
        ["tab with rhythm, upright neck"] = new PrintOptions
        {
            TempoBpm = 40,
            Music = new ScoreOptions { Layout = ScoreLayout.TabWithRhythm, WidthMm = 120 },
            Neck = new FretboardOptions { Turn = NeckTurn.Vertical, LeftHanded = true },
        },
    };

    private static readonly Lazy<ImmutableArray<(string Id, Measurement Measured)>> All = new(() =>
        [.. Library.All.Select(exercise => (exercise.Id, Played.Measured(exercise.Recipe)))]
    );

    public static TheoryData<string> Ways => [.. Options.Keys];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Every_exercise_keeps_every_rule(string way)
    {
        var broken = All
            .Value.SelectMany(exercise =>
                PrintInk
                    .Wrong(ExercisePrint.Picture(exercise.Measured, Options[way]).OrThrow())
                    .Select(rule => $"{exercise.Id}: {rule}")
            )
            .ToList();

        Assert.Equal(82, All.Value.Length);
        Offenders.AreNone(broken);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Pages_of_every_exercise_keep_every_rule(Paper paper)
    {
        var broken = All
            .Value.SelectMany(exercise =>
                ExercisePrint
                    .Pages(exercise.Measured, new PrintOptions { Paper = paper })
                    .OrThrow()
                    .Pages.SelectMany(PrintInk.Wrong)
                    .Select(rule => $"{exercise.Id}: {rule}")
            )
            .ToList();

        Offenders.AreNone(broken);
    }

    [Fact]
    public void A_mark_that_is_moved_onto_another_is_seen()
    {
        var page = ExercisePrint.Picture(Played.Measured("groups-of-five-up"), new PrintOptions()).OrThrow();
        var title = page.Marks.First(mark => mark.Kind == "title");
        var moved = page with { Marks = page.Marks.Replace(title, title.Moved(0, 4)) };

        Assert.Empty(PrintInk.Wrong(page));
        Assert.Contains(PrintInk.Wrong(moved), rule => rule.StartsWith("title-", StringComparison.Ordinal));
    }
}
