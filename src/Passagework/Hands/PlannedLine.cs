using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>A line with both hands planned, and what it asks of them.</summary>
internal sealed record PlannedLine(Line Line, Fingering Fingering, StrokePlan Strokes, LineDemands Demands)
{
    /// <summary>The same as data for the areas that know no hands.</summary>
    public Realization Realization =>
        new(
            Line,
            [
                .. Line.Notes.Select(
                    (note, i) =>
                    {
                        var fingered = Fingering.Notes[i];
                        return new PlayedNote(
                            note,
                            fingered.Place,
                            fingered.Finger,
                            fingered.Position,
                            Strokes.Strokes[i]
                        );
                    }
                ),
            ]
        );
}
