using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Sound.Performance;

/// <summary>A note of one time through: what is played, and when.</summary>
/// <param name="Played">The note of the realization.</param>
/// <param name="Pass">The time through, from 0.</param>
/// <param name="At">Performed time of its onset and of its end, in whole notes from the first bar of the count-in.</param>
/// <param name="OnsetSeconds">The onset in seconds.</param>
/// <param name="EndSeconds">The end in seconds.</param>
internal readonly record struct UnrolledNote(
    PlayedNote Played,
    int Pass,
    (Fraction Onset, Fraction End) At,
    double OnsetSeconds,
    double EndSeconds
);

/// <summary>Writes the times through behind one another.</summary>
internal static class Unrolling
{
    public static ImmutableArray<UnrolledNote> Of(Realization realization, Timeline timeline)
    {
        var notes = ImmutableArray.CreateBuilder<UnrolledNote>();
        for (var pass = 0; pass < timeline.Passes.Length; pass++)
        {
            var span = timeline.Passes[pass];
            var (start, end) = (timeline.BarTime(span.LineBar), timeline.BarTime(span.LineBar + span.Bars));
            foreach (var played in realization.Notes)
            {
                if (played.Note.Onset < start || played.Note.Onset >= end)
                {
                    continue;
                }

                var at = (
                    Onset: timeline.Performed(span, played.Note.Onset),
                    End: timeline.Performed(span, played.Note.End < end ? played.Note.End : end)
                );
                notes.Add(
                    new UnrolledNote(
                        played,
                        pass,
                        at,
                        timeline.SecondsAt(at.Onset),
                        timeline.SecondsAt(at.End)
                    )
                );
            }
        }

        return notes.ToImmutable();
    }
}
