using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Passagework.Choosing;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Cli;

/// <summary>What is searched, from the words of the command line.</summary>
internal sealed class DiscoverySource
{
    private const int MostBoxes = 7;
    private readonly Option<string?> _length = Number("--length", "Notes of a cell, 3 to 8; 5 by default.");
    private readonly Option<string?> _steps = Number(
        "--steps",
        "Notes from cell to cell, 1 to 3; 1 by default."
    );
    private readonly Option<string?> _reach = Number(
        "--reach",
        "Notes from one to the next within a cell at most, 1 to 7; 3 by default."
    );
    private readonly Option<string?> _boxes = Arguments.Text(
        "--boxes",
        "Such as 1-5 (the default) or 1,4.",
        "BOXES"
    );
    private readonly Option<string?> _layout = Arguments.Text(
        "--layout",
        "How the notes lie: " + string.Join(", ", LayoutChoice.Kinds) + "; box by default.",
        "KIND"
    );
    private readonly Option<string?> _tuning = Arguments.Text(
        "--tuning",
        "A tuning by name, or notes from the lowest string.",
        "TUNING"
    );
    private readonly Option<string?> _scale = Arguments.Text(
        "--scale",
        "Scale or arpeggio; minor pentatonic by default.",
        "SCALE"
    );
    private readonly Option<string?> _root = Arguments.Text("--root", "Root note; A by default.", "NOTE");
    private readonly Option<string?> _technique = Arguments.Text(
        "--technique",
        "Picking technique; alternate by default.",
        "TECHNIQUE"
    );
    private readonly Option<bool> _noRolls = new("--no-rolls")
    {
        Description = "No finger that plays neighbouring strings at one fret in turn.",
    };
    private readonly Option<string?> _stretch = Number(
        "--max-stretch",
        "Frets from the lowest to the highest note while the hand stays, at most."
    );
    private readonly Option<string?> _ceiling = Number(
        "--min-ceiling",
        "Top tempo at the player's level at least, notes a second."
    );
    private readonly Option<string?> _count = Number("--count", "How many to show, 1 to 50; 5 by default.");
    private readonly Option<string?> _threads = Number(
        "--threads",
        "How many threads; all there are by default."
    );

    public DiscoverySource(Command command)
    {
        Option[] all =
        [
            _length,
            _steps,
            _reach,
            _boxes,
            _layout,
            _tuning,
            _scale,
            _root,
            _technique,
            _noRolls,
            _stretch,
            _ceiling,
            _count,
            _threads,
        ];
        foreach (var option in all)
        {
            command.Options.Add(option);
        }
    }

    /// <summary>The question without player, music and wishes.</summary>
    public Outcome<DiscoveryQuestion> Read(ParseResult parsed, Hands.Player player) =>
        Base(parsed)
            .Then(recipe => Layouts(recipe, parsed).Then<CellSpace>(layouts => Space(recipe, layouts)))
            .Then(space => Sized(space, parsed))
            .Then(space => FiltersOf(parsed).Then(filters => Counted(space, filters, player, parsed)));

    private static CellSpace Space(Recipe recipe, ImmutableArray<Layout> layouts) =>
        new()
        {
            Notes = recipe.Notes ?? throw new System.Diagnostics.UnreachableException(),
            Instrument = recipe.Instrument,
            Layouts = layouts,
            Picking = recipe.Picking,
        };

    // Tuning before scale before root, as where exercises are changed.
    private Outcome<Recipe> Base(ParseResult parsed)
    {
        Outcome<Recipe> recipe = Library.Find("straight-up").OrThrow().Recipe;
        recipe = Changed(recipe, _tuning, RecipeChange.Tuning, parsed);
        recipe = Changed(recipe, _scale, RecipeChange.Scale, parsed);
        recipe = Changed(recipe, _root, RecipeChange.Root, parsed);
        return Changed(recipe, _technique, RecipeChange.Technique, parsed);
    }

    private static Outcome<Recipe> Changed(
        Outcome<Recipe> recipe,
        Option<string?> option,
        Func<Recipe, string, Outcome<Recipe>> change,
        ParseResult parsed
    ) =>
        parsed.GetValue(option) is { } text
            ? recipe.Then(before =>
                change(before, text).TryGet(out var changed, out var fault)
                    ? changed
                    : (Outcome<Recipe>)(fault with { Where = option.Name })
            )
            : recipe;

    private Outcome<ImmutableArray<Layout>> Layouts(Recipe recipe, ParseResult parsed)
    {
        var kind = parsed.GetValue(_layout) ?? "box";
        var most = recipe.Notes!.Semitones.Length;
        return BoxesOf(parsed.GetValue(_boxes), most)
            .Then(boxes =>
            {
                var layouts = ImmutableArray.CreateBuilder<Layout>();
                foreach (var box in boxes)
                {
                    var laid = LayoutChoice
                        .WithBox(recipe, box)
                        .Then(boxed => LayoutChoice.Take(boxed, kind));
                    if (!laid.TryGet(out var found, out var fault))
                    {
                        return fault with { Where = _layout.Name };
                    }

                    layouts.Add(found.Layout!);
                }

                return (Outcome<ImmutableArray<Layout>>)layouts.Distinct().ToImmutableArray();
            });
    }

    private Outcome<ImmutableArray<int>> BoxesOf(string? text, int most)
    {
        if (text is null)
        {
            return Enumerable.Range(1, Math.Min(5, most)).ToImmutableArray();
        }

        var boxes = new SortedSet<int>();
        foreach (var part in text.Split(','))
        {
            var ends = part.Split('-');
            if (
                ends.Length > 2
                || !Arguments.IsWhole(ends[0], out var from)
                || !Arguments.IsWhole(ends[^1], out var to)
                || from < 1
                || to > Math.Min(MostBoxes, most)
                || from > to
            )
            {
                return new Fault(
                    $"{Quote.Short(text)} names no boxes",
                    _boxes.Name,
                    $"numbers from 1 to {Math.Min(MostBoxes, most)}, such as 1-{Math.Min(5, most)} or 1,3"
                );
            }

            boxes.UnionWith(Enumerable.Range(from, to - from + 1));
        }

        return boxes.ToImmutableArray();
    }

    private Outcome<CellSpace> Sized(CellSpace space, ParseResult parsed) =>
        Between(_length, parsed, (CellSpace.Shortest, CellSpace.Longest), 5)
            .Then(length =>
                Between(_steps, parsed, (1, 3), 1)
                    .Then(step =>
                        Between(_reach, parsed, (1, 7), 3)
                            .Then<CellSpace>(reach =>
                                space with
                                {
                                    Length = length,
                                    Step = step,
                                    Reach = reach,
                                }
                            )
                    )
            );

    private Outcome<DiscoveryFilters> FiltersOf(ParseResult parsed)
    {
        var filters = new DiscoveryFilters { NoRolls = parsed.GetValue(_noRolls) };
        if (parsed.GetValue(_stretch) is not null)
        {
            if (!Between(_stretch, parsed, (0, 36), 0).TryGet(out var frets, out var fault))
            {
                return fault;
            }

            filters = filters with { MaxStretch = frets };
        }

        if (parsed.GetValue(_ceiling) is not { } text)
        {
            return filters;
        }

        return
            double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var ceiling)
            && ceiling is > 0 and <= 100
            ? filters with
            {
                MinCeiling = ceiling,
            }
            : new Fault(
                $"{Quote.Short(text)} is no top tempo",
                _ceiling.Name,
                "notes a second, above 0, at most 100"
            );
    }

    private Outcome<DiscoveryQuestion> Counted(
        CellSpace space,
        DiscoveryFilters filters,
        Hands.Player player,
        ParseResult parsed
    ) =>
        Between(_count, parsed, (1, 50), 5)
            .Then(count =>
                Between(_threads, parsed, (1, 256), Environment.ProcessorCount)
                    .Then<DiscoveryQuestion>(threads => new DiscoveryQuestion
                    {
                        Space = space,
                        Player = player,
                        Filters = filters,
                        Count = count,
                        Threads = threads,
                    })
            );

    /// <summary>The question judged by a teacher's wishes: only the six criteria count, marks belong to known exercises.</summary>
    public static Outcome<DiscoveryQuestion> Wished(DiscoveryQuestion question, Wishes wishes) =>
        wishes
            .WeightsOf(Criteria.All, [])
            .Then<DiscoveryQuestion>(weights =>
                question with
                {
                    Weights = Criteria
                        .All.Zip(weights.Shares)
                        .ToImmutableDictionary(pair => pair.First.Id, pair => pair.Second),
                    Anchors = question.Anchors.With([.. wishes.Anchors.Values]),
                }
            );

    private static Option<string?> Number(string name, string description) =>
        Arguments.Text(name, description, "NUMBER");

    private static Outcome<int> Between(
        Option<string?> option,
        ParseResult parsed,
        (int Least, int Most) limits,
        int usual
    ) => Arguments.Whole(option, parsed, limits, usual, "is out of range");
}
