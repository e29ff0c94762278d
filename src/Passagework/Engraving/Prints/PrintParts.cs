using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Setting;
using Passagework.Engraving.Sheets;
using Passagework.Engraving.Strips;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Prints;

/// <summary>The parts of a print, each drawn at its own corner.</summary>
/// <param name="Head">Title and purpose.</param>
/// <param name="Score">The systems, strips included.</param>
/// <param name="Foot">Key of the strip, neck and beat picture, each to be kept whole.</param>
internal sealed record PrintParts(Figure Head, Score Score, ImmutableArray<Figure> Foot)
{
    /// <summary>What had to be cut.</summary>
    public required ImmutableArray<string> Remarks { get; init; }

    private const double BetweenMm = 8;
    private const int MostLines = 4;

    public static Outcome<PrintParts> Of(Measurement measured, PrintOptions options, double widthMm)
    {
        if (Unprintable(measured.Realization.Line.Recipe) is { } unprintable)
        {
            return unprintable;
        }

        var remarks = ImmutableArray.CreateBuilder<string>();
        var head = HeadOf(measured, widthMm, remarks);
        var music = options.Music with { WidthMm = widthMm };
        return StripOf(measured, options)
            .Then(strip =>
                ScoreEngraver
                    .Engrave(measured.Realization, music)
                    .Then(score =>
                        Pictures(measured, options, widthMm)
                            .Then<PrintParts>(pictures => new PrintParts(
                                head,
                                strip?.Under(score) ?? score,
                                strip is null ? pictures : [strip.Key(widthMm), .. pictures]
                            )
                            {
                                Remarks = remarks.ToImmutable(),
                            })
                    )
            );
    }

    private static Outcome<HandsStrip?> StripOf(Measurement measured, PrintOptions options) =>
        options.Strip
            ? HandsStrip.Of(measured, options.TempoBpm ?? measured.StartBpm).Then<HandsStrip?>(strip => strip)
            : (HandsStrip?)null;

    private static Fault? Unprintable(Recipe recipe) =>
        SheetTexts.Missing("title", TitleOf(recipe)) ?? SheetTexts.Missing("purpose", recipe.Purpose ?? "");

    private static string TitleOf(Recipe recipe) => recipe.Title ?? recipe.Id ?? "";

    private static Figure HeadOf(Measurement measured, double widthMm, ImmutableArray<string>.Builder remarks)
    {
        var recipe = measured.Realization.Line.Recipe;
        var purposeWords = NumberWords.Sentence(recipe.Purpose ?? "");
        var title = TextBlock.Set(TitleOf(recipe), SheetStyles.Titles[1].Style, widthMm, MostLines);
        var purpose = TextBlock.Set(purposeWords, SheetStyles.Purpose, widthMm, MostLines);
        foreach (var (block, name) in new[] { (title, "title"), (purpose, "purpose") })
        {
            if (block.IsCut)
            {
                remarks.Add($"the {name} is longer than {NumberWords.Of(MostLines, "line")} and was cut");
            }
        }

        return new Figure(
            widthMm,
            title.HeightMm + purpose.HeightMm,
            [
                .. title.MarksAt(default, "title", "title"),
                .. purpose.MarksAt(new Point(0, title.HeightMm), "purpose", "purpose"),
            ]
        );
    }

    private static Outcome<ImmutableArray<Figure>> Pictures(
        Measurement measured,
        PrintOptions options,
        double widthMm
    )
    {
        if (!options.Pictures)
        {
            return ImmutableArray<Figure>.Empty;
        }

        return FretboardPicture
            .Draw(measured.Realization, options.Neck)
            .Then(neck =>
                BeatPicture
                    .Draw(measured.Realization.Line, new BeatOptions { Feels = BeatOptions.Plain })
                    .Then<ImmutableArray<Figure>>(beat => Beside(neck, beat, widthMm))
            );
    }

    // Side by side where there is room for both, else one under the other.
    private static ImmutableArray<Figure> Beside(Figure neck, Figure beat, double widthMm)
    {
        var left = widthMm - neck.WidthMm - BetweenMm;
        return beat.WidthMm <= left
            ? [Stack.Across(BetweenMm, Captioned(neck, neck.WidthMm), Captioned(beat, left))]
            : [Captioned(neck, widthMm), Captioned(beat, widthMm)];
    }

    private static Figure Captioned(Figure picture, double widthMm)
    {
        var caption = TextBlock.Set(picture.Caption, SheetStyles.Caption, widthMm);
        var height = picture.HeightMm + 2 + caption.HeightMm;
        return new Figure(
            Math.Max(widthMm, picture.WidthMm),
            height,
            [
                .. picture.Marks,
                .. caption.MarksAt(
                    new Point(0, picture.HeightMm + 2),
                    $"caption-{picture.Marks[0].Id}",
                    "caption"
                ),
            ]
        );
    }
}
