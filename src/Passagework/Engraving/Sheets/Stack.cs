using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Sheets;

/// <summary>Figures put together into one.</summary>
internal static class Stack
{
    /// <summary>One under the other, left edges in line; an empty one takes no room.</summary>
    public static Figure Down(double gap, IEnumerable<Figure> figures)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (width, y) = (0.0, 0.0);
        foreach (var figure in figures)
        {
            y += y > 0 && figure.HeightMm > 0 ? gap : 0;
            marks.AddRange(figure.At(new Point(0, y)));
            y += figure.HeightMm;
            width = Math.Max(width, figure.WidthMm);
        }

        return new Figure(width, y, marks.ToImmutable());
    }

    /// <summary>Side by side, upper edges in line.</summary>
    public static Figure Across(double gap, params ReadOnlySpan<Figure> figures)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (x, height) = (0.0, 0.0);
        foreach (var figure in figures)
        {
            x += x > 0 ? gap : 0;
            marks.AddRange(figure.At(new Point(x, 0)));
            x += figure.WidthMm;
            height = Math.Max(height, figure.HeightMm);
        }

        return new Figure(x, height, marks.ToImmutable());
    }
}
