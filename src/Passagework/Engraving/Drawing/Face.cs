namespace Passagework.Engraving.Drawing;

/// <summary>A text face of the page.</summary>
public enum Face
{
    /// <summary>Sentences.</summary>
    Serif,

    /// <summary>Purposes, letters over groups.</summary>
    SerifItalic,

    /// <summary>Titles and headings.</summary>
    SerifMedium,

    /// <summary>Figures, tables, captions.</summary>
    Sans,

    /// <summary>Remarks inside tables.</summary>
    SansItalic,

    /// <summary>Values.</summary>
    SansMedium,

    /// <summary>Tab numbers, weighed figures.</summary>
    SansBold,

    /// <summary>Labels in small capitals; written in lower case.</summary>
    SmallCaps,
}
