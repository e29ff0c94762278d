using Passagework.Engraving.Scores;
using Passagework.Engraving.Screens;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Engraves a piece for its page.</summary>
internal static class PieceDrawing
{
    // Beside a column of 428; narrower pages scale it.
    private const double WidthPx = 824;
    private const double SpacePx = 7.4;

    /// <summary>Its systems: staff and tab with strokes where they are not obvious, without the strip.</summary>
    public static Outcome<ScreenScore> Of(PreparedPiece prepared) =>
        ScreenScore.Draw(
            prepared.Measured,
            new ScreenOptions
            {
                WidthPx = WidthPx,
                SpacePx = SpacePx,
                Strip = false,
                Counts = false,
                Strokes = ShownStrokes.WhereNotObvious,
                IdPrefix = "piece",
            }
        );
}
