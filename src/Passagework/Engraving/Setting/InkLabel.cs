using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Setting;

/// <summary>A short text placed by its ink.</summary>
/// <param name="Marks">What is drawn.</param>
/// <param name="Box">The ink.</param>
internal sealed record InkLabel(ImmutableArray<Mark> Marks, Box Box)
{
    /// <summary>A text without breaks, the middle of its ink at a point.</summary>
    public static InkLabel Around(string text, Point middle, TextStyle style, string id)
    {
        var block = TextBlock.Set(text, style, double.PositiveInfinity);
        var marks = block.MarksAt(default, id, "label").ToImmutableArray();
        var box = BoxOf(marks);
        var (right, down) = (
            middle.X - ((box.Left + box.Right) / 2),
            middle.Y - ((box.Top + box.Bottom) / 2)
        );
        return new InkLabel([.. marks.Select(mark => mark.Moved(right, down))], box.Moved(right, down));
    }

    private static Box BoxOf(ImmutableArray<Mark> marks) =>
        marks.Select(MarkBox.Of).Aggregate((all, box) => all.With(box));
}
