using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>The colour of each ink, as 0xRRGGBB.</summary>
public sealed class Palette
{
    private readonly ImmutableArray<int> _colours;

    private Palette(params ImmutableArray<int> inInkOrder) => _colours = inInkOrder;

    /// <summary>Black on white, with no grey at all: what a copying machine keeps. Shading vanishes.</summary>
    public static Palette Print { get; } = new(0, 0, 0, 0, 0, 0, 0, White, White);

    /// <summary>The look's colours on light paper.</summary>
    public static Palette Light { get; } =
        new(0x1E1A15, 0x5A5348, 0x6E6658, 0x8B8272, 0xCFC6B4, 0x18416F, 0x9C5313, 0xF0EADC, 0xFAF7F0);

    /// <summary>The look's colours on dark paper.</summary>
    public static Palette Dark { get; } =
        new(0xEFE8DA, 0xB9AF9F, 0x91887A, 0x857B6B, 0x4A4439, 0xA9CBF2, 0xD58B3F, 0x2A2620, 0x1A1815);

    /// <summary>Whether all is drawn in black, white and what lies between.</summary>
    internal bool IsGrey => this == Print;

    private const int White = 0xFFFFFF;

    /// <summary>The colour of an ink.</summary>
    public int Of(Ink ink) => _colours[(int)ink];
}
