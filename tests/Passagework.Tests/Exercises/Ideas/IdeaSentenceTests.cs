using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Exercises.Ideas;

public class IdeaSentenceTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Exercises",
        "Ideas",
        "Golden"
    );

    [Fact]
    public void Every_exercise_of_the_library_is_said_as_it_was_read_by_an_eye() =>
        Golden.Holds(
            "library-sentences.txt",
            string.Concat(
                Library.All.Select(exercise =>
                    $"{exercise.Id} ({IdeaTitle.Of(exercise.Recipe)})\n  {IdeaSentence.Of(exercise.Recipe)}\n"
                )
            )
        );
}
