using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Engraving.Scores;

/// <summary>Finds the rakes of a stroke plan, which tell where the plectrum first touches the strings.</summary>
public static class ScoreRakes
{
    /// <summary>One for each note that the plectrum reaches through muted strings; none where fingers pluck.</summary>
    public static ImmutableArray<ScoreRake> Of(StrokePlan plan, Technique technique) =>
        technique != Technique.Rake
            ? []
            :
            [
                .. plan
                    .Struck.Where(struck => struck.State.Anchor != struck.State.String)
                    .Select(struck => new ScoreRake(struck.Note, struck.State.Anchor)),
            ];
}
