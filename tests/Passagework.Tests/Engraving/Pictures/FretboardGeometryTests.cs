using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;

namespace Passagework.Tests.Engraving.Pictures;

/// <summary>What holds for every neck: all of the library, turned and mirrored, and other instruments.</summary>
public sealed class FretboardGeometryTests
{
    public static TheoryData<bool, bool> Turns =>
        new()
        {
            { false, false },
            { false, true },
            { true, false },
            { true, true },
        };

    [Theory]
    [MemberData(nameof(Turns))]
    public void Ink_is_inside_the_picture_and_apart_for_the_whole_library(bool vertical, bool leftHanded)
    {
        var wrong = new List<string>();
        foreach (var (id, played) in Played.All)
        {
            foreach (var options in Options(vertical, leftHanded))
            {
                var picture = FretboardPicture.Draw(played, options).OrThrow();
                var box = new Box(0, 0, picture.WidthMm, picture.HeightMm);
                wrong.AddRange(
                    InkBoxes.Outside(picture.Marks, box).Select(mark => $"{id} {options.Dots}: {mark}")
                );
                wrong.AddRange(
                    InkBoxes.Overlaps(NeckInk.Apart(picture)).Select(pair => $"{id} {options.Dots}: {pair}")
                );
                wrong.AddRange(InkBoxes.SharedNames(picture.Marks).Select(name => $"{id}: {name} twice"));
                wrong.AddRange(
                    NeckInk.TextOutsideDots(picture).Select(mark => $"{id} {options.Dots}: {mark}")
                );
            }
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Turns))]
    public void Dots_lie_on_their_string_and_between_their_wires(bool vertical, bool leftHanded)
    {
        var wrong = new List<string>();
        foreach (var (id, played) in Played.All)
        {
            var options = new FretboardOptions { Turn = TurnOf(vertical), LeftHanded = leftHanded };
            wrong.AddRange(
                NeckInk
                    .Misplaced(FretboardPicture.Draw(played, options).OrThrow(), vertical)
                    .Select(dot => $"{id}: {dot}")
            );
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("standard", 0)]
    [InlineData("seven-string", 0)]
    [InlineData("eight-string", 3)]
    [InlineData("bass", 0)]
    [InlineData("five-string bass", 2)]
    [InlineData("DADGAD", 5)]
    public void Other_instruments_are_drawn_with_all_their_strings(string tuning, int capo)
    {
        var recipe = Played.On("groups-of-three-up", tuning, capo);
        var picture = FretboardPicture.Draw(Played.Of(recipe), new FretboardOptions()).OrThrow();

        Assert.Equal(recipe.Instrument.Tuning.StringCount, NeckInk.Of(picture, "string").Count());
        Assert.Equal(recipe.Instrument.Tuning.StringCount, NeckInk.Of(picture, "string-number").Count());
        Assert.Empty(InkBoxes.Overlaps(NeckInk.Apart(picture)));
        Assert.Empty(InkBoxes.Outside(picture.Marks, new Box(0, 0, picture.WidthMm, picture.HeightMm)));
        Assert.Empty(NeckInk.Misplaced(picture, vertical: false));
    }

    private static IEnumerable<FretboardOptions> Options(bool vertical, bool leftHanded) =>
        from dots in Enum.GetValues<DotText>()
        from shown in Enum.GetValues<NotesShown>()
        select new FretboardOptions
        {
            Turn = TurnOf(vertical),
            LeftHanded = leftHanded,
            Dots = dots,
            Shown = shown,
        };

    private static NeckTurn TurnOf(bool vertical) => vertical ? NeckTurn.Vertical : NeckTurn.Horizontal;
}
