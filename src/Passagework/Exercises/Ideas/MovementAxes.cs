using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>How the cell moves.</summary>
internal static class MovementAxes
{
    private const int WidestStep = 7;
    private const int MostRepeats = 16;
    private const int UsualRepeats = 4;
    private const string Whole = "all";

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("movement.step", "step between cells")
        {
            Text = recipe => Moves(recipe) ? AxisText.Of(recipe.Movement.Step) : null,
            Choices = _ => Steps(),
            Set = (recipe, text) => RecipeChange.Step(Repeated(recipe, text), text),
            Typing = "a whole number from -7 to 7",
        },
        new("movement.direction", "direction")
        {
            Text = recipe => Moves(recipe) ? RecipeWords.Directions.Of(recipe.Movement.Direction) : null,
            Choices = _ => AxisText.Listed(RecipeWords.Directions, DirectionWords.Of),
            Set = RecipeChange.Direction,
        },
        new("movement.from", "first note of the layout that is used")
        {
            Text = recipe => Moves(recipe) ? End(recipe.Movement.From) : null,
            Choices = recipe => Ends(recipe, recipe.Movement.From, "from its first note", "from note"),
            Set = (recipe, text) => Set(recipe, text, (movement, number) => movement with { From = number }),
            IsUsual = recipe => recipe.Movement.From is not null,
        },
        new("movement.to", "last note of the layout that is used")
        {
            Text = recipe => Moves(recipe) ? End(recipe.Movement.To) : null,
            Choices = recipe => Ends(recipe, recipe.Movement.To, "to its last note", "to note"),
            Set = (recipe, text) => Set(recipe, text, (movement, number) => movement with { To = number }),
            IsUsual = recipe => recipe.Movement.To is not null,
        },
        new("movement.repeat", "times played")
        {
            Text = recipe => Moves(recipe) ? AxisText.Of(recipe.Movement.Repeat) : null,
            Words = recipe => NumberWords.Times(recipe.Movement.Repeat),
            Choices = _ => AxisText.Range(1, MostRepeats, NumberWordsTimes),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 1, 9999)
                    .Then(times => Moved(recipe, movement => movement with { Repeat = times })),
            Typing = "a whole number from 1 to 9999",
            IsUsual = recipe => recipe.Movement.Repeat > 1,
        },
        new("movement.turn", "turn")
        {
            Text = recipe => Moves(recipe) ? RecipeWords.Turns.Of(recipe.Movement.Turn) : null,
            Choices = _ =>
                AxisText.Listed(
                    RecipeWords.Turns,
                    turn => turn == Turn.Shared ? "turning note once" : "turning note twice"
                ),
            Set = (recipe, text) =>
                RecipeWords
                    .Turns.Read(text)
                    .Then(turn => Moved(recipe, movement => movement with { Turn = turn })),
            IsUsual = recipe => recipe.Movement.Direction is Direction.UpAndDown or Direction.DownAndUp,
        },
    ];

    private static bool Moves(Recipe recipe) => recipe.Written is null && recipe.Layout is not null;

    private static string NumberWordsTimes(int times) => NumberWords.Times(times);

    private static IEnumerable<AxisChoice> Steps() =>
        Enumerable
            .Range(-WidestStep, (2 * WidestStep) + 1)
            .Where(step => step != 0)
            .Select(step => AxisText.Choice(step, StepWords(step)) with { Short = Short(step) })
            .Prepend(AxisText.Choice(0, "on the spot"));

    private static string StepWords(int step) =>
        step > 0 ? $"by {NumberWords.Of(step, "step")}" : $"back by {NumberWords.Of(-step, "step")}";

    private static string Short(int step) =>
        step > 0 ? $"{NumberWords.Of(step)} on" : $"{NumberWords.Of(-step)} back";

    // A cell that stays where it is is played again; one that moves again is played once.
    private static Recipe Repeated(Recipe recipe, string text)
    {
        var movement = recipe.Movement;
        return (text, movement) switch
        {
            ("0", { Repeat: 1 }) => recipe with { Movement = movement with { Repeat = UsualRepeats } },
            (not "0", { Step: 0 }) => recipe with { Movement = movement with { Repeat = 1 } },
            _ => recipe,
        };
    }

    private static string End(int? number) => number is { } index ? AxisText.Of(index + 1) : Whole;

    private static IEnumerable<AxisChoice> Ends(Recipe recipe, int? present, string whole, string word)
    {
        var notes =
            recipe is { Layout: { } layout, Notes: { } set }
            && LayoutPlanner.Lay(layout, set, recipe.Instrument).TryGet(out var path, out _)
                ? path.Length
                : 0;
        return Enumerable
            .Range(1, notes)
            .With(present + 1)
            .Select(number => AxisText.Choice(number, $"{word} {AxisText.Of(number)}"))
            .Prepend(new AxisChoice(Whole, whole));
    }

    private static Outcome<Recipe> Set(Recipe recipe, string text, Func<Movement, int?, Movement> change) =>
        text == Whole
            ? Moved(recipe, movement => change(movement, null))
            : TypedText
                .Whole(text, 1, 9999)
                .Then(number => Moved(recipe, movement => change(movement, number - 1)));

    private static Outcome<Recipe> Moved(Recipe recipe, Func<Movement, Movement> change) =>
        LockKeeping.Fit(recipe, recipe with { Movement = change(recipe.Movement) });
}
