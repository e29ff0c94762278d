using Passagework.Sound;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;

namespace Passagework.Studio.Features.Sound;

/// <summary>
/// Levels of one listener's mixes: weighed once for each combination of voices, then kept, so that nothing grows louder or
/// softer when tempo or idea change during play.
/// </summary>
internal sealed class KeptLevels
{
    /// <summary>What is weighed of a mix: enough for its loudness, short enough to begin at once (chosen by us).</summary>
    private const int WeighedSeconds = 6;

    private readonly Lock _one = new();
    private readonly Dictionary<Voices, Mixdown> _levels = [];

    /// <summary>The mix at the levels kept for its voices.</summary>
    public Mixdown Level(Arrangement arrangement, SoundWishes wishes)
    {
        var voices = new Voices(
            wishes.Guitar,
            wishes.Click,
            wishes.CountInBars > 0,
            wishes.Chords is not null
        );
        lock (_one)
        {
            if (_levels.TryGetValue(voices, out var before))
            {
                return arrangement.LevelledLike(before).Mix;
            }

            var weighed = Math.Min(arrangement.Samples, (long)WeighedSeconds * arrangement.SampleRate);
            return _levels[voices] = (arrangement with { Samples = weighed }).Levelled().Mix;
        }
    }

    private readonly record struct Voices(
        GuitarSound Guitar,
        ClickPattern? Click,
        bool CountsIn,
        bool HasBacking
    );
}
