using Passagework.Engraving.Pictures;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Bench;

/// <summary>One picture of the gallery.</summary>
internal sealed record GalleryCase(string Name, Outcome<Recipe> Recipe)
{
    public Player Player { get; init; } = Player.At(2);

    public PrintOptions Print { get; init; } = new();

    public SheetOptions Sheet { get; init; } = new();

    public bool IsSheet { get; init; }
}

/// <summary>All families, metres, tuplets, instruments, techniques, long and foreign titles.</summary>
internal static class GalleryCases
{
    // Little music, much music, music that is cut.
    private static readonly string[] OnSheets =
    [
        "straight-up",
        "groups-of-five-up",
        "groups-of-three-up-and-down",
        "groups-of-five-up-and-down",
        "one-sided-rolls-low-up",
        "trill-one-four",
        "thumb-and-fingers-rolling",
        "finger-orders-in-order",
        "three-per-string-fours-up-and-down",
    ];

    private static readonly string[] Meters = ["2/4", "3/4", "5/4", "6/8", "7/8", "9/8", "12/8"];

    public static IEnumerable<GalleryCase> All() =>
        Families()
            .Concat(Metres())
            .Concat(Tuplets())
            .Concat(Instruments())
            .Concat(Hands())
            .Concat(Staves())
            .Concat(Bends())
            .Concat(Sheets());

    private static IEnumerable<GalleryCase> Families() =>
        Library
            .All.GroupBy(exercise => exercise.Family)
            .Select(family => family.Last())
            .Select(exercise => new GalleryCase($"family-{exercise.Id}", exercise.Recipe));

    private static IEnumerable<GalleryCase> Metres() =>
        Meters.Select(meter => new GalleryCase(
            $"meter-{meter.Replace('/', '-')}",
            Changed(
                "groups-of-four-up",
                (RecipeChange.Meter, meter),
                (RecipeChange.NotesPerBeat, meter[^1] == '8' ? "3" : "2")
            )
        ));

    private static IEnumerable<GalleryCase> Tuplets() =>
        new[] { "3", "5", "6", "7" }.Select(notes => new GalleryCase(
            $"tuplet-{notes}",
            Changed("groups-of-four-up", (RecipeChange.NotesPerBeat, notes))
        ));

    private static IEnumerable<GalleryCase> Instruments()
    {
        foreach (var tuning in new[] { "seven-string", "eight-string", "bass", "five-string bass", "drop D" })
        {
            yield return new GalleryCase(
                $"tuning-{tuning.Replace(' ', '-')}",
                Changed("groups-of-five-up", (RecipeChange.Tuning, tuning))
            );
        }

        yield return new GalleryCase("capo-3", Changed("groups-of-three-up", (RecipeChange.Capo, "3")));
        yield return new GalleryCase("left-handed", Changed("groups-of-five-up"))
        {
            Print = new PrintOptions { Neck = new FretboardOptions { LeftHanded = true } },
        };
        yield return new GalleryCase("key-f-sharp", Changed("scale-thirds-up", (RecipeChange.Root, "F#")));
        yield return new GalleryCase(
            "wide-stretch",
            Changed("three-per-string-fours-up", (RecipeChange.Root, "G"))
        );
    }

    private static IEnumerable<GalleryCase> Hands()
    {
        foreach (var technique in new[] { "economy", "sweep", "hybrid", "fingers", "legato", "rake" })
        {
            yield return new GalleryCase(
                $"technique-{technique}",
                Changed("three-string-sweeps-up", (RecipeChange.Technique, technique))
            );
        }

        yield return new GalleryCase(
            "rake-falling-back",
            Changed("groups-of-six-up", (RecipeChange.Technique, "rake"))
        );
        yield return new GalleryCase("too-fast", Changed("groups-of-five-up", (RecipeChange.Tempo, "140")));
        yield return new GalleryCase(
            "swing",
            Changed("groups-of-three-up", (RecipeChange.NotesPerBeat, "2"), (RecipeChange.Swing, "2/3"))
        );
        yield return new GalleryCase("expert", Changed("groups-of-six-up")) { Player = Player.At(4) };
    }

    private static IEnumerable<GalleryCase> Staves()
    {
        foreach (var layout in Enum.GetValues<ScoreLayout>())
        {
            yield return new GalleryCase($"staves-{layout}", Changed("bursts-five"))
            {
                Print = new PrintOptions
                {
                    Music = new ScoreOptions { Layout = layout, Strokes = ShownStrokes.All },
                },
            };
        }
    }

    private static IEnumerable<GalleryCase> Bends()
    {
        yield return new GalleryCase(
            "high-frets",
            Changed("groups-of-five-up-and-down", (RecipeChange.Root, "G"))
        );
        foreach (var layout in Enum.GetValues<ScoreLayout>())
        {
            yield return new GalleryCase(
                $"bends-{layout}",
                Changed("groups-of-three-up", (RecipeChange.NotesPerBeat, "1"))
            )
            {
                Print = new PrintOptions
                {
                    Music = new ScoreOptions
                    {
                        Layout = layout,
                        Bends =
                        [
                            new ScoreBend(2, Fraction.Of(2)),
                            new ScoreBend(5, Fraction.Of(1), Release: true),
                            new ScoreBend(8, Fraction.Of(1, 2)),
                            new ScoreBend(11, Fraction.Of(3), Release: true),
                            new ScoreBend(14, Fraction.Of(2)),
                        ],
                        Vibratos = [3, 6, 14],
                    },
                },
            };
        }
    }

    private static IEnumerable<GalleryCase> Sheets()
    {
        foreach (var id in OnSheets)
        {
            yield return new GalleryCase($"sheet-{id}", Changed(id)) { IsSheet = true };
        }

        yield return new GalleryCase("sheet-letter", Changed("groups-of-four-up"))
        {
            IsSheet = true,
            Sheet = new SheetOptions { Paper = Paper.Letter },
        };
        yield return new GalleryCase(
            "sheet-long-title",
            Titled("groups-of-four-up", string.Concat(Enumerable.Repeat("Fours over the join ", 9)).Trim())
        )
        {
            IsSheet = true,
        };
        yield return new GalleryCase("sheet-greek", Titled("groups-of-four-up", "Τετράδες που ανεβαίνουν"))
        {
            IsSheet = true,
        };
        yield return new GalleryCase(
            "sheet-cyrillic",
            Titled("groups-of-four-up", "Четвёрки вверх по пентатонике")
        )
        {
            IsSheet = true,
        };
    }

    private static Outcome<Recipe> Titled(string id, string title) =>
        Changed(id).Then<Recipe>(recipe => recipe with { Title = title });

    private static Outcome<Recipe> Changed(
        string id,
        params (Func<Recipe, string, Outcome<Recipe>> Change, string Value)[] changes
    ) =>
        changes.Aggregate(
            Library.Find(id).Then<Recipe>(exercise => exercise.Recipe),
            (recipe, change) => recipe.Then(found => change.Change(found, change.Value))
        );
}
