using Passagework.Engraving.Pictures;
using Passagework.Engraving.Screens;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Screens;

/// <summary>Pictures for a screen that were looked at and found good.</summary>
public sealed class GoldenScreenTests
{
    [Fact]
    public void Score_on_a_phone() =>
        GoldenPicture.Holds(
            "screen-fives-phone.svg",
            ScreenScore
                .Draw(
                    Played.Measured("groups-of-five-up"),
                    new ScreenOptions
                    {
                        WidthPx = 358,
                        SpacePx = 8.6,
                        TempoBpm = 60,
                        Chosen = 5,
                    }
                )
                .OrThrow()
                .Systems[0]
                .Svg
        );

    [Fact]
    public void Neck() =>
        GoldenPicture.Holds(
            "screen-neck-fives.svg",
            ScreenPictures.Neck(Played.Of("groups-of-five-up"), new FretboardOptions(), 360).OrThrow().Svg
        );

    [Fact]
    public void Spans()
    {
        var growth = Growth.Of(Played.Recipe("groups-of-five-up"), Player.At(2)).OrThrow();
        var rows = growth.Levels.Select(level => (Player.LevelNames[level.Level], level.Ceiling)).ToList();
        var spans = ScreenSpans.Draw(rows, 4, 120).OrThrow();

        var pictures = spans.Rows.Prepend(spans.Head).Select(row => row!.Svg);

        GoldenPicture.Holds("screen-spans-fives.svg", string.Join('\n', pictures));
    }
}
