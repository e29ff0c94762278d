using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Makes the one-page handout of an exercise.</summary>
/// <remarks>
/// Everything stands in a box of 180 by 249 mm, so that a page fits A4 and Letter, and no words or numbers are ever set
/// smaller to fit. Taken is the first that fits of: the whole music; its first two to four bars, as many as can be,
/// then the turn written out, with a sentence between; one bar and the turn; the first bars alone. Of a line written note
/// by note as many whole systems as fit. For each form the notes beside the music go up under neck and plan, or together
/// under the music; then the log has five rows; and the staff is as high as asked for, else 6.5 mm. Where there is room
/// to spare the staff is 7.9 mm, a variation is written out, and the rows of the log are higher.
/// </remarks>
/// <example>
/// <c>SheetMaker.Make(measurement.Realization, SheetDefaults.Of(measurement), new SheetOptions())</c>
/// </example>
public static class SheetMaker
{
    /// <summary>The sheet of one exercise; refused where a text can't be printed or nothing fits.</summary>
    public static Outcome<Page> Make(Realization realization, SheetContent content, SheetOptions options)
    {
        if (SheetTexts.Check(content) is { } unprintable)
        {
            return unprintable;
        }

        if (BarMarks.Check(realization.Line, options.Music) is { } wrong)
        {
            return wrong;
        }

        var neck = options.Neck with { LengthMm = SheetTop.NeckMm, Turn = NeckTurn.Horizontal };
        var systems = new ScoreSystems(realization, options.Music);
        var choices = new MusicChoices(
            realization.Line,
            systems,
            VariationOf(content, options.Music),
            options.Music.StaffMm
        );
        return FretboardPicture
            .Draw(realization, neck)
            .Then(figure => new SheetFit(content, figure, options).Find(choices));
    }

    private static (string, ScoreSystems)? VariationOf(SheetContent content, ScoreOptions music) =>
        content.Variation is { } variation
            ? (
                variation.Words,
                new ScoreSystems(variation.Played, music with { Counting = CountedBars.None })
            )
            : null;

    /// <summary>
    /// A page each, in order, each with its remarks, titled after the first; refused with the number of the exercise
    /// that can't be made, where there are several.
    /// </summary>
    public static Outcome<Document> Make(
        IReadOnlyList<(Realization Realization, SheetContent Content)> exercises,
        SheetOptions options
    )
    {
        if (exercises.Count == 0)
        {
            return new Fault("no exercise to print", Right: "one exercise or more");
        }

        var pages = ImmutableArray.CreateBuilder<Page>(exercises.Count);
        foreach (var (realization, content) in exercises)
        {
            if (!Make(realization, content, options).TryGet(out var sheet, out var fault))
            {
                return exercises.Count == 1 ? fault : fault.At($"sheet {pages.Count + 1}: ");
            }

            pages.Add(sheet);
        }

        var first = exercises[0].Content;
        return new Document(
            pages.MoveToImmutable(),
            first.Title,
            first.Teacher.Length == 0 ? null : first.Teacher
        );
    }
}
