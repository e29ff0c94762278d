using System.Collections.Immutable;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Explaining;
using Passagework.Choosing.Measures;
using Passagework.Foundation;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Makes an exercise of the teacher's own out of a find.</summary>
internal sealed class OpenFind(ChangeExercise change)
{
    /// <summary>Begins it under the name that the search gave it.</summary>
    public Task<ChangeAnswer> Open(FoundCell find, CancellationToken stop = default) =>
        change.Begin(find.Recipe with { Title = NumberWords.Sentence(find.Name) }, stop: stop);

    /// <summary>What is measured of it in words: the four criteria that tell figures of one length apart.</summary>
    public static ImmutableArray<(string Title, string Degree)> Words(FoundCell find) =>
        [
            .. FindNewExercises.TellingApart.Select(criterion =>
                (
                    NumberWords.Sentence(criterion.Title),
                    Degree.Words(find.Values[Criteria.All.IndexOf(criterion)])
                )
            ),
        ];
}
