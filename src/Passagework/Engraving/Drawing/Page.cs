using System.Collections.Immutable;

namespace Passagework.Engraving.Drawing;

/// <summary>A picture or a printed page: a size and the marks on it, later ones over earlier ones.</summary>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Marks">All that is drawn.</param>
public sealed record Page(double WidthMm, double HeightMm, ImmutableArray<Mark> Marks)
{
    /// <summary>One sentence for those who do not see the picture.</summary>
    public string? Description { get; init; }

    /// <summary>What a teacher should know: texts that were cut, rows, bars and marks that were left out.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];
}

/// <summary>Pages that belong together, with what a document file says about them.</summary>
/// <param name="Pages">At least one.</param>
/// <param name="Title">The document's title.</param>
/// <param name="Author">Who made it; null when nobody is named.</param>
public sealed record Document(ImmutableArray<Page> Pages, string Title, string? Author = null);
