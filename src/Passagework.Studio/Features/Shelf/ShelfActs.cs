using Passagework.Foundation;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Shelf;

/// <summary>Does what a button of the shelf says, and tells where to go then.</summary>
internal sealed class ShelfActs(
    BeginExercise begin,
    OpenExercise open,
    CopyExercise copy,
    ThrowAwayExercise throwAway
)
{
    /// <summary>Writes a new one.</summary>
    public const string Write = "write";

    private const string CopyOf = "copy:";
    private const string Away = "away:";
    private const string Back = "back:";

    /// <summary>The word of a button that copies.</summary>
    public static string Copy(ExerciseKey key) => CopyOf + key;

    /// <summary>The word of a button that throws away.</summary>
    public static string ThrowAway(ExerciseKey key) => Away + key;

    /// <summary>The word of a button that brings back.</summary>
    public static string BringBack(ExerciseKey key) => Back + key;

    /// <summary>Does it.</summary>
    /// <returns>The address to go to.</returns>
    public async Task<Outcome<string>> Do(string? act, CancellationToken stop = default) =>
        act switch
        {
            Write => PageOf(await begin.Begin(stop)),
            not null when KeyAfter(CopyOf, act) is { } key => await Copied(key, stop),
            not null when KeyAfter(Away, act) is { } key && key.IsOwn(out var id) => await Thrown(
                id,
                key,
                stop
            ),
            not null when KeyAfter(Back, act) is { } key && key.IsOwn(out var id) => await Brought(id, stop),
            _ => new Fault("this button does nothing here", Right: "one of the buttons of the page"),
        };

    private async Task<Outcome<string>> Copied(ExerciseKey key, CancellationToken stop) =>
        (await open.Open(key, stop)).TryGet(out var exercise, out var fault)
            ? PageOf(await copy.Copy(exercise, exercise.Recipe, stop))
            : fault;

    private async Task<Outcome<string>> Thrown(Guid id, ExerciseKey key, CancellationToken stop) =>
        await throwAway.Remove(id, stop) is { } fault ? fault : $"/exercises?thrown={key}";

    private async Task<Outcome<string>> Brought(Guid id, CancellationToken stop) =>
        await throwAway.BringBack(id, stop) is { } fault ? fault : "/exercises";

    private static Outcome<string> PageOf(ChangeAnswer answer) =>
        answer switch
        {
            ChangeAnswer.Kept kept => kept.Exercise.Key.Url,
            ChangeAnswer.ChangedElsewhere other => other.Theirs.Key.Url,
            ChangeAnswer.Failed failed => failed.Fault,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static ExerciseKey? KeyAfter(string word, string act) =>
        act.StartsWith(word, StringComparison.Ordinal) ? new ExerciseKey(act[word.Length..]) : null;
}
