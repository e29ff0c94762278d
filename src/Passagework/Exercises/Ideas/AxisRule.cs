using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>How one axis is read from a recipe and set in it.</summary>
/// <param name="Key">The field in a recipe file.</param>
/// <param name="Label">What it is.</param>
internal sealed record AxisRule(string Key, string Label)
{
    /// <summary>The present value as text; null where the recipe has no such axis.</summary>
    public required Func<Recipe, string?> Text { get; init; }

    /// <summary>Sets a value; the fault need not say where.</summary>
    public Func<Recipe, string, Outcome<Recipe>> Set { get; init; } =
        (_, _) => new Fault("this follows from the rest", Right: "change something else");

    /// <summary>The values in order. The present one is put first where it is not among them.</summary>
    public Func<Recipe, IEnumerable<AxisChoice>> Choices { get; init; } = _ => [];

    /// <summary>The words of a present value that is not among the choices; the text itself where none are given.</summary>
    public Func<Recipe, string>? Words { get; init; }

    /// <summary>How a room says a value; null where all say it alike.</summary>
    public Func<Recipe, RoomStyle, string, string>? Said { get; init; }

    /// <summary>The value that a room means by what it types; null where all mean the same.</summary>
    public Func<Recipe, RoomStyle, string, string>? Meant { get; init; }

    /// <summary>How a room types a value; null where it is typed as it stands in a file.</summary>
    public Func<Recipe, RoomStyle, string, string>? TypedAs { get; init; }

    /// <summary>What may be typed.</summary>
    public string? Typing { get; init; }

    /// <summary>What a room that names notes otherwise may type; null where that is the same.</summary>
    public Func<RoomStyle, string>? TypingIn { get; init; }

    /// <summary>Whether the page shows it at once.</summary>
    public Func<Recipe, bool> IsUsual { get; init; } = _ => true;

    /// <summary>Whether the last value is followed by the first.</summary>
    public bool Wraps { get; init; }

    /// <summary>Whether the choices are one row of values that can be stepped through, not a list of things to do.</summary>
    public bool IsRow { get; init; } = true;

    /// <summary>The axis as a recipe has it; null where it has none.</summary>
    public Axis? Of(Recipe recipe, RoomStyle style)
    {
        if (Text(recipe) is not { } text)
        {
            return null;
        }

        var choices = Spoken(recipe, style).ToImmutableArray();
        var index = IndexOf(choices, text);
        if (index < 0 && !choices.IsEmpty)
        {
            choices = choices.Insert(0, new AxisChoice(text, Present(recipe, style, text)));
            index = 0;
        }

        return new Axis
        {
            Key = Key,
            Label = Label,
            Text = text,
            Typed = TypedAs?.Invoke(recipe, style, text) ?? text,
            Value = index >= 0 ? choices[index].Words : Present(recipe, style, text),
            Choices = choices,
            Index = index < 0 ? null : index,
            Typing = TypingIn?.Invoke(style) ?? Typing,
            IsUsual = IsUsual(recipe),
            Backward = Neighbour(choices, index, -1)?.Short,
            Forward = Neighbour(choices, index, 1)?.Short,
        };
    }

    /// <summary>The value a number of steps from the present one; null where the values end.</summary>
    public AxisChoice? Neighbour(ImmutableArray<AxisChoice> choices, int index, int steps)
    {
        if (!IsRow || choices.Length < 2 || index < 0)
        {
            return null;
        }

        var next = Wraps ? WholeNumbers.Modulo(index + steps, choices.Length) : index + steps;
        return next >= 0 && next < choices.Length ? choices[next] : null;
    }

    private IEnumerable<AxisChoice> Spoken(Recipe recipe, RoomStyle style) =>
        Said is null
            ? Choices(recipe)
            : Choices(recipe).Select(choice => new AxisChoice(choice.Key, Said(recipe, style, choice.Key)));

    private string Present(Recipe recipe, RoomStyle style, string text) =>
        Said?.Invoke(recipe, style, text) ?? Words?.Invoke(recipe) ?? text;

    private static int IndexOf(ImmutableArray<AxisChoice> choices, string text)
    {
        for (var i = 0; i < choices.Length; i++)
        {
            if (choices[i].Key == text)
            {
                return i;
            }
        }

        return -1;
    }
}
