using System.Globalization;
using Passagework.Tests.Outside;

namespace Passagework.Tests.Engraving.Press;

/// <summary>Chromium, which shows a file and takes a picture of it.</summary>
internal static class Chromium
{
    /// <summary>The picture's file, beside the file shown.</summary>
    public static string Screenshot(
        string file,
        double scale,
        (int Width, int Height) window,
        params (string, string)[] environment
    )
    {
        var png = Path.ChangeExtension(file, environment.Length == 0 ? ".png" : ".bare.png");
        OutsideProgram.Run(
            "chromium",
            [
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                string.Create(CultureInfo.InvariantCulture, $"--force-device-scale-factor={scale}"),
                $"--window-size={window.Width},{window.Height}",
                $"--screenshot={png}",
                file,
            ],
            environment
        );
        return png;
    }
}
