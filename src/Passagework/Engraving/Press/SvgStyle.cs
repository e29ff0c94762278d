namespace Passagework.Engraving.Press;

/// <summary>How words are written in a picture.</summary>
public enum SvgWords
{
    /// <summary>As outlines, with the words beside them for readers: the same on every machine, no font needed.</summary>
    Outlines,

    /// <summary>As text in classes such as <c>pw-sans-bold</c>, for a page that brings the fonts along.</summary>
    Text,
}

/// <summary>How a page is written as SVG.</summary>
public sealed record SvgStyle
{
    /// <summary>Black on white, for a file that stands alone.</summary>
    public static SvgStyle Print { get; } = new();

    /// <summary>In the look's colours, which the page around it may change through the variables of its tokens.</summary>
    public static SvgStyle Screen { get; } = new() { Palette = Palette.Light, Variables = true };

    /// <summary>Colours of the inks.</summary>
    public Palette Palette { get; init; } = Palette.Print;

    /// <summary>
    /// Whether the colours are CSS variables (<c>--ink</c>, <c>--soft</c>, <c>--staff</c>, <c>--rule</c>,
    /// <c>--hair</c>, <c>--fretting</c>, <c>--picking</c>, <c>--shade</c>, <c>--paper</c>) with the palette as default.
    /// </summary>
    public bool Variables { get; init; }

    /// <summary>Outlines or text.</summary>
    public SvgWords Words { get; init; }

    /// <summary>Whether the colours and faces of the classes are written into the picture; else the page around it says them.</summary>
    public bool StyleSheet { get; init; } = true;

    /// <summary>Put before every id, so that several pictures can stand in one page.</summary>
    public string IdPrefix { get; init; } = "";

    /// <summary>Name of the picture for those who do not see it; browsers also show it under the pointer.</summary>
    public string? Title { get; init; }
}
