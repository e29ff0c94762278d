using CsCheck;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Tests.Architecture;
using static Passagework.Tests.Exercises.Ideas.PlainWords;
using static Passagework.Tests.Exercises.Ideas.RandomIdeas;

namespace Passagework.Tests.Exercises.Ideas;

public class IdeaAxesTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Exercises",
        "Ideas",
        "Golden"
    );

    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("position-shift-up")]
    [InlineData("first-notes-up-and-down")]
    [InlineData("thumb-and-fingers-rolling")]
    [InlineData("diagonal-down")]
    [InlineData("one-string-run-up")]
    public void Controls_of_an_exercise_are_as_they_were_read_by_an_eye(string id) =>
        Golden.Holds($"axes-{id}.txt", Listed(Library.Find(id).OrThrow().Recipe));

    [Fact]
    public void Every_library_exercise_has_eight_groups_whose_first_control_is_usual() =>
        Assert.All(
            Library.All,
            exercise =>
            {
                var groups = IdeaAxes.Of(exercise.Recipe);
                Assert.Equal(8, groups.Length);
                Assert.All(groups, group => Assert.True(group.Axes[0].IsUsual));
            }
        );

    [Fact]
    public void Setting_a_control_to_what_it_says_changes_nothing() =>
        All.Sample(
            recipe =>
                AxesOf(recipe)
                    .All(axis =>
                        Set(recipe, axis.Key, axis.Text) == recipe
                        && Set(recipe, axis.Key, axis.Value) == recipe
                    ),
            iter: 400
        );

    // The door leaves a value alone that is the present one; the rule behind it has to come to the same. Only a kind of
    // layout, chosen anew, begins with its usual parameters, and locks are a list of things to do.
    [Fact]
    public void Writing_a_control_as_it_was_read_gives_the_same_idea() =>
        All.Sample(
            recipe =>
                AxesOf(recipe)
                    .Where(axis =>
                        !axis.IsFact && axis.Text.Length > 0 && axis.Key is not ("layout" or "fretting.locks")
                    )
                    .All(axis =>
                        IdeaAxes
                            .RuleOf(recipe, axis.Key)!
                            .Set(recipe, axis.Text)
                            .TryGet(out var written, out _)
                        && NoteLocks.ClearAll(written) == NoteLocks.ClearAll(recipe)
                    ),
            iter: 300
        );

    [Fact]
    public void Step_on_and_back_leads_to_the_same_value() =>
        All.Sample(
            recipe =>
                AxesOf(recipe)
                    .Where(axis => axis.Forward is not null)
                    .All(axis =>
                        !IdeaChange.Step(recipe, axis.Key, 1).TryGet(out var on, out _)
                        || IsGone(on, axis)
                        || !IdeaChange.Step(on, axis.Key, -1).TryGet(out var back, out _)
                        || AxesOf(back).Single(same => same.Key == axis.Key).Text == axis.Text
                    ),
            iter: 100
        );

    [Fact]
    public void Every_choice_can_be_laid_out_or_is_refused_at_its_control_in_plain_words() =>
        All.Sample(
            recipe =>
                AxesOf(recipe)
                    .All(axis =>
                        axis.Choices.All(choice =>
                            IdeaChange
                                .Set(recipe, axis.Key, choice.Key)
                                .TryGet(out var changed, out var fault)
                                ? LineBuilder.Build(changed) is Outcome<Line>.Done
                                : fault.Where == axis.Key && IsPlain(fault.What) && IsPlain(fault.Right)
                        )
                    ),
            iter: 50
        );

    [Fact]
    public void Every_random_idea_is_said_in_one_plain_sentence() =>
        All.Sample(
            recipe =>
            {
                var sentence = IdeaSentence.Of(recipe);
                return IsPlain(sentence)
                    && IsPlain(IdeaTitle.Of(recipe))
                    && sentence.EndsWith('.')
                    && char.IsUpper(sentence[0])
                    && !sentence.Contains("  ", StringComparison.Ordinal)
                    && !sentence.Contains(" ,", StringComparison.Ordinal);
            },
            iter: 2_000
        );

    [Fact]
    public void Words_of_all_controls_are_plain() =>
        All.Sample(
            recipe =>
                AxesOf(recipe)
                    .All(axis =>
                        IsPlain(axis.Value)
                        && IsPlain(axis.Label)
                        && IsPlain(axis.Typing ?? "")
                        && axis.Choices.All(choice => IsPlain(choice.Words))
                        && axis.Choices.Select(choice => choice.Key).Distinct().Count() == axis.Choices.Length
                    ),
            iter: 200
        );

    // A value that was typed is listed only while it is the present one; once left, it is no longer there to go back to.
    private static bool IsGone(Recipe left, Axis axis) =>
        axis.Typing is not null
        && AxesOf(left).Single(same => same.Key == axis.Key).Choices.All(choice => choice.Key != axis.Text);

    private static Recipe? Set(Recipe recipe, string key, string value) =>
        IdeaChange.Set(recipe, key, value).TryGet(out var changed, out _) ? changed : null;

    private static string Listed(Recipe recipe) =>
        string.Concat(
            IdeaAxes
                .Of(recipe)
                .Select(group =>
                    $"{group.Key}\n{string.Concat(group.Axes.Select(axis => $"  {(axis.IsUsual ? "" : "(")}{axis.Key} = {axis.Text}: {axis.Value}{(axis.IsUsual ? "" : ")")} [{axis.Backward} < > {axis.Forward}] {Choices(axis)}\n"))}"
                )
        );

    private static string Choices(Axis axis) =>
        axis.Choices.Length <= 8
            ? string.Join(" | ", axis.Choices.Select(choice => choice.Words))
            : $"{string.Join(" | ", axis.Choices.Take(4).Select(choice => choice.Words))} … {axis.Choices.Length}";
}
