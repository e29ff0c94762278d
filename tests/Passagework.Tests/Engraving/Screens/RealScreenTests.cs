using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Screens;
using Passagework.Tests.Architecture;
using Passagework.Tests.Engraving.Press;

namespace Passagework.Tests.Engraving.Screens;

// Gathered marks and marks one by one, one beside the other in one window of Chromium: the same dots.
public sealed class RealScreenTests
{
    private const int Scale = 2;
    private const int Width = 960;
    private const int Height = 700;
    private const string Fonts = "src/Passagework/Engraving/Fonts/npm/node_modules/@fontsource";

    [Fact]
    public void Chromium_draws_gathered_marks_as_it_draws_them_one_by_one()
    {
        var played = Played.Measured("slurred-threes-up-and-down");
        var options = new ScreenOptions { WidthPx = 944, Strip = false };
        var system = ScreenScore.Draw(played, options).OrThrow().Systems[0];
        var neck = ScreenPictures.Neck(played.Realization, new FretboardOptions(), 360).OrThrow();
        var (systemMm, neckMm) = (SystemMm(played, options), NeckMm(played));
        var window = Picture.From(
            Screenshot(
                $"<div>{system.Svg}</div><div>{neck.Svg}</div>",
                Single(systemMm, system.WidthPx) + Single(neckMm, neckMm.WidthMm * NeckPxPerMm)
            )
        );

        var gathered = window.Part(0, 0, Width * Scale, Height * Scale);
        var single = window.Part(Width * Scale, 0, Width * Scale, Height * Scale);

        var (mean, foreign) = gathered.Against(single);
        Assert.InRange(foreign, 0, 1e-4);
        Assert.InRange(mean, 0, 0.003);
        // Something is drawn at all.
        Assert.InRange(single.Ink, 20_000, 400_000);
        Assert.InRange(gathered.Ink, single.Ink * 0.98, single.Ink * 1.02);
    }

    private static double NeckPxPerMm => 13.5 / (9.4 * 25.4 / 72);

    private static Page SystemMm(Passagework.Hands.Measurement measured, ScreenOptions options)
    {
        var layout = new ScreenLayout(options, measured.Realization.Line.Recipe.Rhythm.Meter);
        var system = ScoreEngraver.Engrave(measured.Realization, layout.Music).OrThrow().Systems[0];
        var marks = new ScreenSystemWriter(measured.Realization, layout).MarksOf(system);
        var left = layout.Frame.LeftPx / layout.Frame.PxPerMm;
        return new Page(
            system.WidthMm + left,
            system.HeightMm,
            [.. marks.Select(mark => mark.Moved(left, 0))]
        );
    }

    private static Page NeckMm(Passagework.Hands.Measurement measured) =>
        FretboardPicture
            .Draw(measured.Realization, new FretboardOptions { LengthMm = 360 / NeckPxPerMm })
            .OrThrow()
            .ToPage();

    private static string Single(Page page, double widthPx)
    {
        var svg = SvgWriter
            .Write(
                page,
                SvgStyle.Screen with
                {
                    IdPrefix = $"w{(int)widthPx}",
                    Words = SvgWords.Text,
                    StyleSheet = false,
                }
            )
            .OrThrow();
        var height = page.HeightMm / page.WidthMm * widthPx;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<div style=\"width:{widthPx}px;height:{Math.Ceiling(height)}px\">{svg.Replace("<svg ", "<svg style=\"width:100%;height:auto\" ", StringComparison.Ordinal)}</div>"
        );
    }

    private static string Screenshot(string gathered, string single)
    {
        var html = Path.Combine(Printed.Folder, "screens.html");
        var faces = new[]
        {
            ("Alegreya", "alegreya", "400-normal", "400", "normal"),
            ("Alegreya", "alegreya", "400-italic", "400", "italic"),
            ("Alegreya Sans", "alegreya-sans", "400-normal", "400", "normal"),
            ("Alegreya Sans", "alegreya-sans", "700-normal", "700", "normal"),
            ("Alegreya Sans SC", "alegreya-sans-sc", "500-normal", "500", "normal"),
        }.Select(face =>
            $"@font-face{{font-family:'{face.Item1}';font-weight:{face.Item4};font-style:{face.Item5};src:url('{Repository.Root}/{Fonts}/{face.Item2}/files/{face.Item2}-latin-{face.Item3}.woff2')}}"
        );
        // A page of the studio has a base address; references within the page must not care.
        File.WriteAllText(
            html,
            $"<!doctype html><meta charset=\"utf-8\"><base href=\"/\"><style>{string.Concat(faces)}{ScreenDefs.StyleSheet}body{{margin:0;background:white}}section{{position:absolute;top:0}}svg{{vertical-align:top}}</style>"
                + $"{ScreenDefs.Markup}<section>{gathered}</section><section style=\"left:{Width}px\">{single}</section>"
        );
        return Chromium.Screenshot(html, Scale, (2 * Width, Height));
    }
}
