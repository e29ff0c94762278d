using System.Text.Json;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;
using SkiaSharp;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>The two hands without colour, as a grey printer or an eye without cones has them (achromatopsia, by the browser).</summary>
[Collection(BrowserTests.Name)]
public class HandsInGreyTests(OneStudio one, Chromium chromium) : IClassFixture<OneStudio>
{
    // The first bar of either hand in the strip, in pixels of the page.
    private const string Bars = """
        () => ["pw-fretting.pw-line", "pw-picking.pw-edge"].map((name) => {
          const path = document.querySelector(`[data-score] path.${name}[stroke-width]`);
          const [x, y, a, b] = path.getAttribute("d").match(/^M([\d.]+) ([\d.]+)(?:v(-?[\d.]+)|h[\d.]+v([\d.]+))/).slice(1).map(Number);
          const width = name.includes("line") ? Number(path.getAttribute("stroke-width")) : 16;
          const left = name.includes("line") ? x - width / 2 : x;
          const height = a || b;
          const at = path.getScreenCTM();
          return { x: at.e + left, y: at.f + Math.min(y, y + height), width, height: Math.abs(height) };
        })
        """;

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task They_differ_by_lightness_and_texture(ColorScheme scheme)
    {
        await using var desk = await Desk.At(one.Studio, chromium, Desk.Laptop, scheme);
        await desk.Open("/exercises/groups-of-five-up");
        var session = await desk.Page.Context.NewCDPSessionAsync(desk.Page);
        await session.SendAsync(
            "Emulation.setEmulatedVisionDeficiency",
            new() { ["type"] = "achromatopsia" }
        );

        var bars = (await desk.Page.EvaluateAsync(Bars))!.Value.EnumerateArray().ToList();
        var (fretting, frettingTexture) = await Seen(desk.Page, bars[0]);
        var (picking, pickingTexture) = await Seen(desk.Page, bars[1]);

        Assert.InRange(Math.Abs(fretting - picking), 50, 255);
        Assert.InRange(frettingTexture, 0, 5);
        Assert.InRange(pickingTexture, 25, 128);
    }

    // Mean and standard deviation of the greys inside a bar, its edge left out.
    private static async Task<(double Mean, double Deviation)> Seen(IPage page, JsonElement bar)
    {
        float Of(string name) => bar.GetProperty(name).GetSingle();
        var bytes = await page.ScreenshotAsync(
            new()
            {
                Clip = new()
                {
                    X = Of("x") + 2,
                    Y = Of("y") + 2,
                    Width = Of("width") - 4,
                    Height = Of("height") - 4,
                },
            }
        );
        using var picture = SKBitmap.Decode(bytes);
        var greys = picture.Pixels.Select(pixel => (double)pixel.Green).ToList();
        Assert.All(picture.Pixels, pixel => Assert.InRange(Math.Abs(pixel.Red - pixel.Blue), 0, 2));
        var mean = greys.Average();
        return (mean, Math.Sqrt(greys.Average(grey => (grey - mean) * (grey - mean))));
    }
}
