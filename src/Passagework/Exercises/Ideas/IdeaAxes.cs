using System.Collections.Immutable;

namespace Passagework.Exercises.Ideas;

/// <summary>An exercise as plain controls: eight groups, one axis for each thing that can be changed.</summary>
/// <example>
/// The axis <c>movement.step</c> of <c>groups-of-five-up</c> reads "by one step"; forward leads to "two on".
/// </example>
public static class IdeaAxes
{
    private static readonly ImmutableArray<(string Key, ImmutableArray<AxisRule> Rules)> Groups =
    [
        ("notes", NotesAxes.Rules),
        ("layout", [.. LayoutAxes.Rules, .. InstrumentAxes.Rules]),
        ("cell", CellAxes.Rules),
        ("movement", MovementAxes.Rules),
        ("rhythm", RhythmAxes.Rules),
        ("picking", HandAxes.Picking),
        ("fretting", HandAxes.Fretting),
        ("ending", EndingAxes.Rules),
    ];

    /// <summary>The eight groups in the order of the page.</summary>
    public static ImmutableArray<AxisGroup> Of(Recipe recipe, RoomStyle style = default) =>
        [
            .. Groups.Select(group => new AxisGroup(
                group.Key,
                [.. group.Rules.Select(rule => rule.Of(recipe, style)).OfType<Axis>()]
            )),
        ];

    /// <summary>The rules of an axis that a recipe has; null where it has none of that name.</summary>
    /// <remarks>Kinds of layout share names: of several rules only one applies.</remarks>
    internal static AxisRule? RuleOf(Recipe recipe, string key) =>
        Groups
            .SelectMany(group => group.Rules)
            .FirstOrDefault(rule => rule.Key == key && rule.Text(recipe) is not null);

    /// <summary>The names of the axes that a recipe has.</summary>
    internal static IReadOnlyCollection<string> KeysOf(Recipe recipe) =>
        [
            .. Groups
                .SelectMany(group => group.Rules)
                .Where(rule => rule.Text(recipe) is not null)
                .Select(rule => rule.Key),
        ];
}
