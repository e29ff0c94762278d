using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>A heading over a few lines: what to try when this is easy, when to stop.</summary>
/// <param name="Heading">The heading.</param>
/// <param name="Text">The words under it.</param>
internal sealed record NoteBox(string Heading, string Text)
{
    private const double BetweenMm = 0.3;

    private string Id => Heading.Split(' ')[0].ToLowerInvariant();

    /// <summary>The boxes of a sheet that have words.</summary>
    public static IReadOnlyList<NoteBox> Of(SheetContent content) =>
        [
            .. new[]
            {
                new NoteBox("When this is easy", content.WhenEasy),
                new NoteBox("Stop if it hurts", content.Caution),
            }.Where(box => !string.IsNullOrWhiteSpace(box.Text)),
        ];

    /// <summary>With the heading in bold at the beginning of the text, which takes the fewest lines.</summary>
    public Figure DrawRunIn(double width)
    {
        var text = TextBlock.Set(
            [new Phrase(Heading + ".", Strong: true), " " + Text],
            SheetStyles.Note,
            width
        );
        return new Figure(width, text.HeightMm, [.. text.MarksAt(default, $"note-{Id}", "note")]);
    }

    /// <summary>With the heading over the text.</summary>
    public Figure Draw(double width)
    {
        var heading = TextBlock.Set(Heading, SheetStyles.Heading, width);
        var text = TextBlock.Set(Text, SheetStyles.Note, width);
        var top = heading.HeightMm + BetweenMm;
        return new Figure(
            width,
            top + text.HeightMm,
            [
                .. heading.MarksAt(default, $"note-{Id}-heading", "heading"),
                .. text.MarksAt(new Point(0, top), $"note-{Id}", "note"),
            ]
        );
    }
}
