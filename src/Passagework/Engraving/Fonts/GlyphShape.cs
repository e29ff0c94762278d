using System.Collections.Immutable;

namespace Passagework.Engraving.Fonts;

/// <summary>How large a glyph of the music font is; staff spaces, y upwards, from the glyph's origin.</summary>
/// <param name="CodePoint">Its SMuFL code point.</param>
/// <param name="Advance">Width with side bearings.</param>
/// <param name="Left">Left edge of the ink.</param>
/// <param name="Bottom">Lower edge of the ink.</param>
/// <param name="Right">Right edge of the ink.</param>
/// <param name="Top">Upper edge of the ink.</param>
/// <param name="Anchors">Where other things are set on to it, by SMuFL name such as <c>stemUpSE</c>.</param>
public sealed record GlyphShape(
    int CodePoint,
    double Advance,
    double Left,
    double Bottom,
    double Right,
    double Top,
    ImmutableDictionary<string, (double X, double Y)> Anchors
);
