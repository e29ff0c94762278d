using Microsoft.Playwright;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>What a user does with a play line.</summary>
internal static class Playing
{
    /// <summary>A control by its label.</summary>
    public static ILocator Field(Desk desk, string name) =>
        desk.Page.GetByLabel(name, new() { Exact = true });

    /// <summary>Types into the field of the tempo.</summary>
    public static async Task TypeTempo(Desk desk, string text)
    {
        await Field(desk, "Tempo").FillAsync(text);
        await Field(desk, "Tempo").PressAsync("Enter");
    }

    /// <summary>Types a tempo and waits for the sound that follows from it.</summary>
    public static async Task Tempo(Desk desk, string text)
    {
        await TypeTempo(desk, text);
        // No async function: its promise would count as an answer.
        await desk.Page.WaitForFunctionAsync(
            $$"""
            () => {
              const sound = globalThis.passageworkPlay?.player.sound;
              sound?.load();
              return sound?.times?.passes[0].fromBpm === {{text}};
            }
            """
        );
    }

    /// <summary>Presses Play and waits until it plays.</summary>
    public static async Task Play(Desk desk)
    {
        await desk.Page.Locator("[data-play]").ClickAsync();
        await desk.Page.Locator("[data-playing]").WaitForAsync();
    }

    /// <summary>Waits until a second of the sound is heard.</summary>
    public static Task HeardUntil(Desk desk, double seconds) =>
        desk.Page.WaitForFunctionAsync(
            FormattableString.Invariant(
                $"() => globalThis.passageworkPlay?.player.heard()?.seconds >= {seconds}"
            )
        );
}
