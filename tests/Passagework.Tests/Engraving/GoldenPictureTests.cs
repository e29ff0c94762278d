using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Press;
using Passagework.Engraving.Sheets;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving;

/// <summary>Necks, beat pictures and sheets that were looked at and found good.</summary>
public sealed class GoldenPictureTests
{
    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("straight-up")]
    [InlineData("one-string-run-up")]
    [InlineData("thumb-and-fingers-rolling")]
    [InlineData("one-sided-rolls-low-up")]
    public void Neck(string id) =>
        Holds($"neck-{id}", FretboardPicture.Draw(Played.Of(id), new FretboardOptions()).OrThrow());

    [Fact]
    public void Left_handed_upright_neck_with_seven_strings_and_capo()
    {
        var recipe = Played.On("straight-up", "seven-string", 2) with { Layout = new Layout.OpenPosition() };
        var played = Played.Of(recipe);
        var options = new FretboardOptions
        {
            Turn = NeckTurn.Vertical,
            LeftHanded = true,
            Dots = DotText.Degree,
            Shown = NotesShown.WholeLine,
        };

        Holds("neck-left-upright-seven-capo", FretboardPicture.Draw(played, options).OrThrow());
    }

    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("bursts-nine")]
    public void Beat(string id) =>
        Holds(
            $"beat-{id}",
            BeatPicture.Draw(Played.Of(id).Line, new BeatOptions { Feels = BeatOptions.Plain }).OrThrow()
        );

    [Theory]
    [InlineData("groups-of-five-up", Paper.A4)]
    [InlineData("groups-of-five-up-and-down", Paper.Letter)]
    [InlineData("groups-of-six-up-and-down", Paper.A4)]
    public void Sheet(string id, Paper paper)
    {
        var content = SheetDefaults.Of(Played.Measured(id)) with
        {
            Student = "Isolde",
            From = new DateOnly(2025, 11, 25),
            Weeks = 2,
            Teacher = "Hedda Quill",
            Room = "Saltmarsh Guitar Room",
        };

        Holds(
            $"sheet-{id}",
            SheetMaker.Make(Played.Of(id), content, new SheetOptions { Paper = paper }).OrThrow()
        );
    }

    private static void Holds(string name, Figure figure) => Holds(name, figure.ToPage());

    // Words as text, so that the files stay small and can be read.
    private static void Holds(string name, Page page) =>
        GoldenPicture.Holds(
            $"{name}.svg",
            SvgWriter.Write(page, new SvgStyle { Words = SvgWords.Text }).OrThrow()
        );
}
