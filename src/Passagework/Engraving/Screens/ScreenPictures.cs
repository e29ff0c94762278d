using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Screens;

/// <summary>The plates of an exercise for a page: where it lies on the neck, and how it sits against the beat.</summary>
/// <example>
/// <c>ScreenPictures.Neck(realization, new FretboardOptions(), 360)</c>
/// </example>
public static class ScreenPictures
{
    // Figures in pictures are 13.5 px, and never below 13 (the look).
    private const double PxPerMm = 13.5 / PrintSizes.PictureFigureMm;
    private const double LeastPxPerMm = 13 / PrintSizes.PictureFigureMm;
    private const double LeastPx = 120;
    private const double MostPx = 4_000;

    /// <summary>
    /// The neck as wide as asked for, or as high where it stands upright; wider where its frets would be too narrow for
    /// numbers. Refused where the options leave no room for the notes.
    /// </summary>
    /// <param name="realization">What is played.</param>
    /// <param name="options">How the neck is drawn; its length is that of the page.</param>
    /// <param name="lengthPx">Length along the neck, 120 to 4,000 pixels.</param>
    public static Outcome<ScreenPicture> Neck(
        Realization realization,
        FretboardOptions options,
        double lengthPx
    ) =>
        ScreenRules.Within(lengthPx, (LeastPx, MostPx), "the length of the neck") is { } fault
            ? fault
            : FretboardPicture
                .Draw(realization, options with { LengthMm = lengthPx / PxPerMm })
                .Then(neck => ScreenPicture.Of(neck, PxPerMm));

    /// <summary>
    /// Groups against beats. Where the feels asked for are wider than the page, those farthest from the exercise's own are
    /// left out, its own never. Refused where a line has no groups made of pulses.
    /// </summary>
    /// <param name="line">The line.</param>
    /// <param name="options">Which feels are drawn.</param>
    /// <param name="widthPx">Room, 120 to 4,000 pixels.</param>
    public static Outcome<ScreenPicture> Beat(Line line, BeatOptions options, double widthPx)
    {
        if (ScreenRules.Within(widthPx, (LeastPx, MostPx), "the width of the beat picture") is { } fault)
        {
            return fault;
        }

        var own = line.Recipe.Rhythm.NotesPerBeat;
        ImmutableArray<Feel> feels = options.Feels.IsDefault ? [] : options.Feels;
        while (true)
        {
            var drawn = BeatPicture.Draw(line, options with { Feels = feels });
            if (!drawn.TryGet(out var figure, out _) || feels.Length < 2 || IsNarrow(figure, widthPx))
            {
                return drawn.Then(beat =>
                    ScreenPicture.Of(beat, Math.Clamp(widthPx / beat.WidthMm, LeastPxPerMm, PxPerMm))
                );
            }

            feels = feels.Remove(feels.MaxBy(feel => Math.Abs(feel.NotesPerBeat - own)));
        }
    }

    private static bool IsNarrow(Figure figure, double widthPx) => figure.WidthMm * LeastPxPerMm <= widthPx;
}
