using Passagework.Exercises;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Shelf;

/// <summary>Begins an exercise from the plainest idea, to be changed on its page.</summary>
internal sealed class BeginExercise(ChangeExercise change, ReadSettings settings)
{
    // Something to change, not a blank page.
    private static readonly Recipe Idea = RecipeJson
        .Read(
            """
            { "passagework": 1,
              "notes": { "root": "A", "scale": "minor pentatonic" },
              "layout": { "kind": "box" },
              "cell": { "offsets": [0, 1, 2] } }
            """
        )
        .OrThrow();

    /// <summary>Groups of three up through box 1 of the A minor pentatonic, begun and not yet on the shelf.</summary>
    public async Task<ChangeAnswer> Begin(CancellationToken stop = default) =>
        await change.Begin(Idea with { Picking = (await settings.Read(stop)).Picking }, stop: stop);
}
