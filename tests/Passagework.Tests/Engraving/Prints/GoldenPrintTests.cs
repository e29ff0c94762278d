using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>Exercises with everything under them that were looked at and found good.</summary>
public sealed class GoldenPrintTests
{
    [Theory]
    [InlineData("straight-up", ScoreLayout.StaffAndTab, 180)]
    [InlineData("bursts-five", ScoreLayout.TabWithRhythm, 120)]
    [InlineData("one-sided-rolls-low-up", ScoreLayout.StaffAndTab, 140)]
    [InlineData("thumb-and-fingers-rolling", ScoreLayout.Tab, 160)]
    public void Print(string id, ScoreLayout layout, double widthMm)
    {
        var options = new PrintOptions
        {
            Music = new ScoreOptions { Layout = layout, WidthMm = widthMm },
        };
        var page = ExercisePrint.Picture(Played.Measured(id), options).OrThrow();

        GoldenPicture.Holds(
            $"print-{id}.svg",
            SvgWriter.Write(page, new SvgStyle { Words = SvgWords.Text }).OrThrow()
        );
    }
}
