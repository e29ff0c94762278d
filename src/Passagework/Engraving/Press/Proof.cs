using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Foundation;

namespace Passagework.Engraving.Press;

/// <summary>A mark ready for print.</summary>
/// <param name="Mark">What is drawn.</param>
/// <param name="Line">The text as set; null for a mark that is no text.</param>
internal readonly record struct ReadyMark(Mark Mark, TextLine? Line)
{
    /// <summary>A mark with its text set; letters that the typeface lacks are not looked for.</summary>
    public static ReadyMark Of(Mark mark) =>
        new(mark, mark is TextMark text ? TextLine.Set(text.Text, text.Face, text.TrackingEm) : null);

    /// <summary>Where the text's baseline begins.</summary>
    public Point Start(TextMark text)
    {
        var width = (Line?.WidthEm ?? 0) * text.SizeMm;
        return text.Anchor switch
        {
            Anchor.Middle => text.At.Moved(-width / 2, 0),
            Anchor.End => text.At.Moved(-width, 0),
            _ => text.At,
        };
    }
}

/// <summary>Looks a page over before it is printed: sizes within bounds, nothing undrawable.</summary>
internal static class Proof
{
    /// <summary>Longest side of a page.</summary>
    public const double LargestMm = 2_000;

    // Marks may lie beside the page, but not where rounding would spoil them.
    private const double FarthestMm = 10_000;

    /// <summary>The page's marks with their texts set, or why the page cannot be printed.</summary>
    public static Outcome<ImmutableArray<ReadyMark>> Of(Page page)
    {
        if (!IsSide(page.WidthMm) || !IsSide(page.HeightMm))
        {
            var size = string.Create(CultureInfo.InvariantCulture, $"{page.WidthMm} × {page.HeightMm} mm");
            return new Fault($"the page measures {size}", Right: $"sides above 0 and up to {LargestMm} mm");
        }

        var ready = ImmutableArray.CreateBuilder<ReadyMark>(page.Marks.Length);
        foreach (var mark in page.Marks)
        {
            if (Reason(mark) is { } fault)
            {
                return fault with { Where = $"mark {Quote.Short(mark.Id)}" };
            }

            var set = ReadyMark.Of(mark);
            if (set is { Line.Missing.IsEmpty: false, Mark: TextMark { Text: var words, Face: var face } })
                return TextFont.Missing(words, face)!;

            ready.Add(set);
        }

        return ready.MoveToImmutable();
    }

    private static bool IsSide(double mm) => mm is > 0 and <= LargestMm;

    private static Fault? Reason(Mark mark)
    {
        if (mark is GlyphMark { CodePoint: var code } && !MusicFont.Has(code))
        {
            var sign = string.Create(CultureInfo.InvariantCulture, $"U+{code:X4}");
            return new Fault($"the music font has no {sign}", Right: "a sign that it has");
        }

        if (mark is PolygonMark { Corners.Length: < 3 })
        {
            return new Fault("a figure with fewer than three corners", Right: "at least three");
        }

        return Array.TrueForAll(Lengths(mark), length => Math.Abs(length) <= FarthestMm)
            ? null
            : new Fault("a place or length is not a number or out of reach", Right: $"up to {FarthestMm} mm");
    }

    private static double[] Lengths(Mark mark) =>
        mark switch
        {
            GlyphMark m => [m.At.X, m.At.Y, m.SpaceMm],
            LineMark m => [m.From.X, m.From.Y, m.To.X, m.To.Y, m.WidthMm, .. m.DashMm],
            CurveMark m =>
            [
                m.From.X,
                m.From.Y,
                m.Lean.X,
                m.Lean.Y,
                m.LeanBack.X,
                m.LeanBack.Y,
                m.To.X,
                m.To.Y,
                m.EndMm,
                m.MiddleMm,
            ],
            TextMark m => [m.At.X, m.At.Y, m.SizeMm, m.TrackingEm],
            PolygonMark m => [.. m.Corners.SelectMany(corner => new[] { corner.X, corner.Y }), m.OutlineMm],
            CircleMark m => [m.Centre.X, m.Centre.Y, m.RadiusMm, m.OutlineMm],
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
