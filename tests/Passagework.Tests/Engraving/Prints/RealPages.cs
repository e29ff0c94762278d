using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>A dozen documents as people print them: six sheets and six exercises with everything under them.</summary>
internal static class RealPages
{
    private static readonly Lazy<IReadOnlyDictionary<string, Document>> Whole = new(() =>
        Made().ToDictionary(made => made.Name, made => made.Document)
    );

    public static IReadOnlyDictionary<string, Document> All => Whole.Value;

    private static IEnumerable<(string Name, Document Document)> Made()
    {
        yield return ("sheet-fives", Sheet(Played.Recipe("groups-of-five-up")));
        yield return ("sheet-sixes-and-back", Sheet(Played.Recipe("groups-of-six-up-and-down")));
        yield return ("sheet-letter", Sheet(Played.Recipe("straight-up"), Paper.Letter));
        yield return ("sheet-thumb", Sheet(Played.Recipe("thumb-and-fingers-rolling")));
        yield return ("sheet-bass", Sheet(Played.On("groups-of-three-up", "bass")));
        yield return (
            "sheet-greek",
            Sheet(Played.Recipe("groups-of-four-up") with { Title = "Τετράδες & <πεντάδες>" })
        );
        yield return ("print-fives-and-back", Print(Played.Recipe("groups-of-five-up-and-down")));
        yield return ("print-rolls", Print(Played.Recipe("one-sided-rolls-low-up")));
        yield return ("print-sweeps", Print(Played.Recipe("three-string-sweeps-up"), ScoreLayout.Tab));
        yield return ("print-bursts", Print(Played.Recipe("bursts-nine"), ScoreLayout.TabWithRhythm));
        yield return ("print-eight-strings", Print(Played.On("groups-of-three-up", "eight-string")));
        yield return ("print-capo", Print(Played.On("straight-up", "standard", capo: 3)));
    }

    private static Document Sheet(Recipe recipe, Paper paper = Paper.A4) =>
        SheetMaker
            .Make(
                [
                    (
                        Played.Of(recipe),
                        SheetDefaults.Of(Played.Measured(recipe)) with
                        {
                            Student = "Isolde",
                            Teacher = "Hedda Quill",
                        }
                    ),
                ],
                new SheetOptions { Paper = paper }
            )
            .OrThrow();

    private static Document Print(Recipe recipe, ScoreLayout layout = ScoreLayout.StaffAndTab)
    {
        var options = new PrintOptions
        {
            Music = new ScoreOptions { Layout = layout, Strokes = ShownStrokes.All },
            Neck = new FretboardOptions { LeftHanded = layout == ScoreLayout.Tab },
        };
        return ExercisePrint.Pages(Played.Measured(recipe), options).OrThrow();
    }
}
