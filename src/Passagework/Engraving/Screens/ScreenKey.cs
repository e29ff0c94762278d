using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Strips;
using Passagework.Foundation;

namespace Passagework.Engraving.Screens;

/// <summary>One line of the key of a strip.</summary>
/// <param name="Sign">The sign, in its middle.</param>
/// <param name="Words">What it means.</param>
public sealed record ScreenKey(ScreenPicture Sign, string Words)
{
    private const double WidthPx = 40;
    private const double HeightPx = 20;
    private const double PxPerMm = ScreenOptions.UsualSpacePx / ScreenLayout.SpaceMm;

    /// <summary>The key of a strip: only what occurs in it is explained; empty without one.</summary>
    internal static Outcome<ImmutableArray<ScreenKey>> Of(HandsStrip? strip)
    {
        var keys = ImmutableArray.CreateBuilder<ScreenKey>();
        foreach (var (sign, words) in strip?.Signs.Entries() ?? [])
        {
            var middle = new Point(WidthPx / 2 / PxPerMm, HeightPx / 2 / PxPerMm);
            var figure = new Figure(WidthPx / PxPerMm, HeightPx / PxPerMm, [.. sign("", middle)])
            {
                Description = words,
            };
            if (!ScreenPicture.Of(figure, PxPerMm).TryGet(out var picture, out var fault))
            {
                return fault;
            }

            keys.Add(new ScreenKey(picture, words));
        }

        return keys.ToImmutable();
    }
}
