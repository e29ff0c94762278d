using Passagework.Engraving.Screens;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Studio.Features.Shelf;

/// <summary>The two small pictures of a row, as markup; empty where there is nothing to draw.</summary>
internal static class ShelfPictures
{
    private const double BarPx = 240;
    private const double HandsPx = 192;

    /// <summary>The first bar as tab.</summary>
    public static string FirstBar(Realization realization) =>
        Markup(Engraving.Screens.ShelfPictures.FirstBar(Untimed(realization), BarPx));

    /// <summary>What its notes ask of both hands.</summary>
    public static string Hands(Measurement measured) =>
        Markup(Engraving.Screens.ShelfPictures.Strip(measured, HandsPx));

    // Tempo and swing stand in words beside it.
    private static Realization Untimed(Realization realization)
    {
        var recipe = realization.Line.Recipe;
        var rhythm = recipe.Rhythm with { TempoBpm = null, Swing = default };
        return realization with { Line = realization.Line with { Recipe = recipe with { Rhythm = rhythm } } };
    }

    private static string Markup(Outcome<ScreenPicture> picture) =>
        picture.TryGet(out var drawn, out _) ? drawn.Svg : "";
}
