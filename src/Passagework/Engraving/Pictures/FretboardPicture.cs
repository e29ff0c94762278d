using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws where an exercise lies on the neck.</summary>
/// <remarks>
/// Played notes are filled, other notes of the layout hollow, roots square and others round. Frets count from the capo,
/// as in tab.
/// </remarks>
/// <example>
/// <c>FretboardPicture.Draw(realization, new FretboardOptions { Dots = DotText.Finger })</c>
/// </example>
public static class FretboardPicture
{
    /// <summary>The neck of a line that is fingered; refused where the options leave no room for its notes.</summary>
    public static Outcome<Figure> Draw(Realization realization, FretboardOptions options)
    {
        var recipe = realization.Line.Recipe;
        if (options.Dots == DotText.Degree && recipe.Notes is null)
        {
            return new Fault(
                "the line names no root, so its notes have no degrees",
                "$.notes",
                "a root and a scale, or another text in the dots"
            );
        }

        return NeckNotes
            .Of(realization, options.Shown)
            .Then(notes =>
                FretRange
                    .Of([.. notes.Places], recipe.Instrument, options)
                    .Then<Figure>(range => Draw(realization, notes, range, options))
            );
    }

    private static Figure Draw(
        Realization realization,
        NeckNotes notes,
        FretRange range,
        FretboardOptions options
    )
    {
        var recipe = realization.Line.Recipe;
        var frame = new NeckFrame(recipe.Instrument, range, options);
        var dots = new NeckDots(frame, notes, realization, options);
        var words = new NeckWords(frame, notes, dots, recipe, options);
        ImmutableArray<Mark> route =
            options.Route && notes.CanBeFollowed ? [.. new NeckRoute(frame, notes).Marks()] : [];
        return new Figure(
            frame.WidthMm,
            frame.HeightMm,
            [.. new NeckGrid(frame, recipe.Instrument).Marks(), .. route, .. dots.Marks()]
        )
        {
            Caption = words.Caption(),
            Description = words.Description(),
        };
    }
}
