using System.Collections.Immutable;
using Passagework.Choosing.Explaining;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Makes an exercise of the teacher's own out of a find.</summary>
internal sealed class OpenFind(ChangeExercise change)
{
    /// <summary>Begins it under the name that the search gave it.</summary>
    public async Task<ChangeAnswer> Open(
        KeptFinds finds,
        Find find,
        RoomStyle style,
        CancellationToken stop = default
    ) =>
        finds
            .NameOf(find, style)
            .Then(name => find.Recipe.Then<Recipe>(idea => idea with { Title = NumberWords.Sentence(name) }))
            .TryGet(out var titled, out var fault)
            ? await change.Begin(titled, stop: stop)
            : new ChangeAnswer.Failed(fault);

    /// <summary>What is measured of it in words: the four criteria that tell figures of one length apart.</summary>
    public static ImmutableArray<(string Title, string Degree)> Words(Find find) =>
        [
            .. FindNewExercises.TellingApart.Select(criterion =>
                (
                    NumberWords.Sentence(criterion.Title),
                    Degree.Words(find.Values[Criteria.All.IndexOf(criterion)])
                )
            ),
        ];
}
