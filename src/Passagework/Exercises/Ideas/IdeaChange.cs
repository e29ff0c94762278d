using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>One axis of an exercise changed; what it makes meaningless follows, what it makes impossible is a fault.</summary>
/// <example>
/// <c>IdeaChange.Set(recipe, "movement.step", "2")</c>; <c>IdeaChange.Step(recipe, "layout.near", 1)</c>
/// </example>
public static class IdeaChange
{
    /// <summary>
    /// The recipe with an axis set to one of its choices, by key or by words, or to a typed value. The fault of an
    /// impossible value stands at the axis and says what is possible.
    /// </summary>
    public static Outcome<Recipe> Set(Recipe recipe, string key, string value, RoomStyle style = default)
    {
        if (Find(recipe, key, style).TryGet(out var found, out var unknown))
        {
            return Apply(recipe, found, value.Trim());
        }

        return unknown;
    }

    /// <summary>The recipe with an axis set to what a room has typed: its own words mean what it means by them.</summary>
    public static Outcome<Recipe> Type(Recipe recipe, string key, string typed, RoomStyle style)
    {
        if (!Find(recipe, key, style).TryGet(out var found, out var unknown))
        {
            return unknown;
        }

        var text = typed.Trim();
        return text == found.Axis.Value
            ? recipe
            : Apply(recipe, found, found.Rule.Meant?.Invoke(recipe, style, text) ?? text);
    }

    /// <summary>The recipe with an axis moved along its choices; refused at their end.</summary>
    /// <param name="recipe">The exercise.</param>
    /// <param name="key">The axis.</param>
    /// <param name="steps">1 for the next value, −1 for the one before.</param>
    /// <param name="style">How the room calls things.</param>
    public static Outcome<Recipe> Step(Recipe recipe, string key, int steps, RoomStyle style = default)
    {
        if (!Find(recipe, key, style).TryGet(out var found, out var unknown))
        {
            return unknown;
        }

        var (rule, axis) = found;
        return rule.Neighbour(axis.Choices, axis.Index ?? -1, steps) is { } next
            ? Apply(recipe, found, next.Key)
            : new Fault(
                $"'{axis.Value}' is the {(steps > 0 ? "last" : "first")} value of {axis.Label}",
                key,
                steps > 0 ? "step back" : "step on"
            );
    }

    private static Outcome<(AxisRule Rule, Axis Axis)> Find(Recipe recipe, string key, RoomStyle style) =>
        IdeaAxes.RuleOf(recipe, key) is { } rule && rule.Of(recipe, style) is { } axis
            ? (rule, axis)
            : new Fault(
                $"this exercise has no control {Quote.Short(key)}",
                Right: NearestWord.Hint(key, IdeaAxes.KeysOf(recipe))
            );

    private static Outcome<Recipe> Apply(Recipe recipe, (AxisRule Rule, Axis Axis) found, string value)
    {
        var (rule, axis) = found;
        if (value == axis.Text || value == axis.Value)
        {
            return recipe;
        }

        var text = axis.Choices.FirstOrDefault(choice => choice.Words == value)?.Key ?? value;
        return rule.Set(recipe, text).Then(Buildable) switch
        {
            Outcome<Recipe>.Refused { Fault: var fault } => fault with { Where = rule.Key },
            var done => done,
        };
    }

    private static Outcome<Recipe> Buildable(Recipe recipe) =>
        LineBuilder.Build(recipe).Then<Recipe>(_ => recipe);
}
