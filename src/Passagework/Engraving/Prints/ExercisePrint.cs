using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Prints;

/// <summary>Shows a measured exercise: title, music, what it asks of both hands, neck and beat.</summary>
/// <example>
/// <c>ExercisePrint.Picture(Measurer.Measure(recipe, player), new PrintOptions())</c>
/// </example>
public static class ExercisePrint
{
    private const double MarginMm = 6;
    private const double ApartMm = 6;

    /// <summary>One picture as high as it needs; refused where that is more than 2,000 mm.</summary>
    public static Outcome<Page> Picture(Measurement measured, PrintOptions options) =>
        PrintParts
            .Of(measured, options, options.Music.WidthMm)
            .Then(parts =>
            {
                var music = ScorePages.Tall(parts.Score);
                var whole = Stack.Down(
                    ApartMm,
                    [parts.Head, new Figure(music.WidthMm, music.HeightMm, music.Marks), .. parts.Foot]
                );
                var height = whole.HeightMm + (2 * MarginMm);
                return height > Proof.LargestMm
                    ? TooHigh(height)
                    : (Outcome<Page>)
                        new Page(
                            whole.WidthMm + (2 * MarginMm),
                            height,
                            whole.At(new Point(MarginMm, MarginMm))
                        )
                        {
                            Description = Described(measured),
                            Remarks = parts.Remarks,
                        };
            });

    /// <summary>Pages to print: the systems fill them, what stands under the music is kept whole.</summary>
    public static Outcome<Document> Pages(Measurement measured, PrintOptions options) =>
        PrintParts
            .Of(measured, options, SheetBox.WidthMm)
            .Then<Document>(parts =>
            {
                var (width, height) = SheetBox.Size(options.Paper);
                var left = SheetBox.LeftMm(options.Paper);
                var bottom = height - SheetBox.TopMm - SheetBox.HeightMm;
                var paper = new PaperBox(width, height, left, SheetBox.TopMm, bottom);
                var music = ScorePages.Fill(parts.Score, paper, parts.Head.HeightMm + ApartMm);
                var pages = new PageFoot(paper, ApartMm).Add(music, parts.Foot);
                var first = pages[0];
                pages[0] = first with
                {
                    Marks = [.. parts.Head.At(new Point(left, SheetBox.TopMm)), .. first.Marks],
                    Remarks = parts.Remarks,
                };
                return new Document(
                    [.. pages.Select(page => page with { Description = Described(measured) })],
                    SheetDefaults.TitleOf(measured.Realization.Line.Recipe)
                );
            });

    private static Fault TooHigh(double heightMm) =>
        new(
            System.FormattableString.Invariant($"{heightMm:F0} mm high"),
            "the picture",
            $"at most {Proof.LargestMm} mm: fewer bars, or pages (PDF)"
        );

    private static string Described(Measurement measured)
    {
        var line = measured.Realization.Line;
        return System.FormattableString.Invariant(
            $"{SheetDefaults.TitleOf(line.Recipe)}: {line.Notes.Length} notes in {line.Recipe.Rhythm.Meter}"
        );
    }
}
