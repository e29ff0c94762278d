using Passagework.Foundation;

namespace Passagework.Studio.Components.Playing;

/// <summary>What the browser could not do, in words.</summary>
internal static class PlayTroubles
{
    /// <summary>The words for a kind of trouble.</summary>
    public static Fault Of(string kind) =>
        kind == "no-audio"
            ? new Fault("this browser makes no sound on pages", "", "any browser of the last years")
            : new Fault(
                "the sound did not come from the studio",
                "",
                "play again; if it stays silent, load the page anew"
            );
}
