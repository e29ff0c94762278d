using System.Collections.Immutable;

namespace Passagework.Engraving.Drawing;

/// <summary>One thing drawn on a page. All lengths are millimetres.</summary>
public abstract record Mark
{
    /// <summary>Stable name within the page, such as <c>note-7-head</c>; the same exercise gives the same names.</summary>
    public required string Id { get; init; }

    /// <summary>What the mark stands for, such as <c>head</c>, <c>stem</c>, <c>tab-number</c>; a hook for style sheets.</summary>
    public required string Kind { get; init; }

    /// <summary>Index of the note it belongs to; null for what belongs to none.</summary>
    public int? Note { get; init; }

    /// <summary>What it is drawn in.</summary>
    public Ink Ink { get; init; }
}

/// <summary>A sign of the music font.</summary>
/// <param name="CodePoint">Its SMuFL code point.</param>
/// <param name="At">The glyph's origin.</param>
/// <param name="SpaceMm">Length of one staff space; a font's em is four of them.</param>
public sealed record GlyphMark(int CodePoint, Point At, double SpaceMm) : Mark;

/// <summary>A straight line.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="WidthMm">Thickness.</param>
public sealed record LineMark(Point From, Point To, double WidthMm) : Mark
{
    /// <summary>Lengths of ink and gap by turns; empty for an unbroken line.</summary>
    public ImmutableArray<double> DashMm { get; init; } = [];

    /// <summary>Whether the ends are round; else they are cut square at the points.</summary>
    public bool RoundEnds { get; init; }

    /// <summary>Content equality.</summary>
    public bool Equals(LineMark? other) =>
        other is not null
        && base.Equals(other)
        && (From, To, WidthMm, RoundEnds) == (other.From, other.To, other.WidthMm, other.RoundEnds)
        && DashMm.SequenceEqual(other.DashMm);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), From, To);
}

/// <summary>A slur or tie: a cubic curve thick in the middle, filled between an outer and an inner arc.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="Lean">First control point of the middle line.</param>
/// <param name="LeanBack">Second control point of the middle line.</param>
/// <param name="To">Where it ends.</param>
/// <param name="EndMm">Thickness at both ends.</param>
/// <param name="MiddleMm">Thickness in the middle.</param>
public sealed record CurveMark(
    Point From,
    Point Lean,
    Point LeanBack,
    Point To,
    double EndMm,
    double MiddleMm
) : Mark;

/// <summary>A line of text.</summary>
/// <param name="Text">What is written, as plain characters; a back end escapes it.</param>
/// <param name="At">On the baseline: left end, middle or right end as <see cref="Anchor"/> says.</param>
/// <param name="Face">The face.</param>
/// <param name="SizeMm">Height of the em.</param>
public sealed record TextMark(string Text, Point At, Face Face, double SizeMm) : Mark
{
    /// <summary>Which part of the text stands at <see cref="At"/>.</summary>
    public Anchor Anchor { get; init; }

    /// <summary>Space added after each letter, in ems.</summary>
    public double TrackingEm { get; init; }
}

/// <summary>Which part of a text stands at its point.</summary>
public enum Anchor
{
    /// <summary>The left end.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The right end.</summary>
    End,
}

/// <summary>A closed figure with straight sides: a beam, a box, an arrow head.</summary>
/// <param name="Corners">Its corners in order; at least three.</param>
public sealed record PolygonMark(ImmutableArray<Point> Corners) : Mark
{
    /// <summary>The corners of a rectangle about its centre.</summary>
    public static ImmutableArray<Point> RectangleAbout(Point centre, double width, double height) =>
        [
            centre.Moved(-width / 2, -height / 2),
            centre.Moved(width / 2, -height / 2),
            centre.Moved(width / 2, height / 2),
            centre.Moved(-width / 2, height / 2),
        ];

    /// <summary>How the inside is drawn.</summary>
    public Filling Filling { get; init; }

    /// <summary>Thickness of the outline; 0 for none.</summary>
    public double OutlineMm { get; init; }

    /// <summary>Content equality.</summary>
    public bool Equals(PolygonMark? other) =>
        other is not null
        && base.Equals(other)
        && Corners.SequenceEqual(other.Corners)
        && (Filling, OutlineMm) == (other.Filling, other.OutlineMm);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), Corners.Length);
}

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="RadiusMm">To the middle of the outline.</param>
public sealed record CircleMark(Point Centre, double RadiusMm) : Mark
{
    /// <summary>How the inside is drawn.</summary>
    public Filling Filling { get; init; }

    /// <summary>Thickness of the outline; 0 for none.</summary>
    public double OutlineMm { get; init; }
}

/// <summary>How the inside of a closed figure is drawn.</summary>
public enum Filling
{
    /// <summary>In the mark's ink.</summary>
    Solid,

    /// <summary>In the paper, so that what lies under it vanishes.</summary>
    Paper,

    /// <summary>Ruled at 45 degrees in the mark's ink on paper: lines 0.45 mm wide, 1.2 mm apart.</summary>
    Ruled,

    /// <summary>Not at all; what lies under it shows.</summary>
    None,
}
