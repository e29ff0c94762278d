using Passagework.Exercises;
using Passagework.Exercises.Ideas;

namespace Passagework.Studio.Features.Exercises;

/// <summary>A change of the idea in words, for undoing it by name.</summary>
internal static class ChangeWords
{
    /// <summary>Such as "step from one step to two steps".</summary>
    public static string Of((Recipe Before, Recipe After) change, string axis, RoomStyle style)
    {
        var (was, became) = (Find(change.Before, axis, style), Find(change.After, axis, style));
        return (was, became) switch
        {
            ({ } from, { } to) => $"{from.Label} from {from.Value} to {to.Value}",
            ({ } from, null) => $"{from.Label} away from {from.Value}",
            (null, { } to) => $"{to.Label} to {to.Value}",
            _ => axis,
        };
    }

    private static Axis? Find(Recipe recipe, string key, RoomStyle style) =>
        IdeaAxes.Of(recipe, style).SelectMany(group => group.Axes).FirstOrDefault(axis => axis.Key == key);
}
