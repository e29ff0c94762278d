using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The upper part of a sheet: the neck with its caption, and the plan.</summary>
/// <remarks>
/// They stand side by side. A long stretch of neck would leave the plan too narrow; then the plan stands under it.
/// </remarks>
internal sealed class SheetTop
{
    /// <summary>Length of the neck beside the plan.</summary>
    public const double NeckMm = 84;

    private const double NarrowestPlanMm = 70;

    /// <summary>Between two columns.</summary>
    public const double BetweenMm = 8;
    private const double CaptionMm = 1;
    private const double NotesMm = 3;

    private readonly Figure _neck;
    private readonly Figure _plan;
    private readonly bool _beside;

    public SheetTop(Figure neck, SheetContent content, List<string> remarks)
    {
        _beside = neck.WidthMm + BetweenMm + NarrowestPlanMm <= SheetBox.WidthMm;
        var column = _beside ? Math.Max(neck.WidthMm, NeckMm) : SheetBox.WidthMm;
        var caption = TextBlock.Set(neck.Caption, SheetStyles.Caption, column);
        _neck = Stack.Down(
            CaptionMm,
            [
                neck,
                new Figure(
                    column,
                    caption.HeightMm,
                    [.. caption.MarksAt(default, "neck-caption", "caption")]
                ),
            ]
        );
        _plan = PlanTable.Draw(
            content,
            _beside ? SheetBox.WidthMm - column - BetweenMm : SheetBox.WidthMm,
            remarks
        );
    }

    /// <summary>Neck and plan alone.</summary>
    public Figure Plain() => Together(_neck, _plan);

    /// <summary>With the note boxes under neck and plan, placed so that the whole is as low as can be.</summary>
    public Figure With(IReadOnlyList<NoteBox> notes)
    {
        if (!_beside)
        {
            return Stack.Down(NotesMm, [Plain(), Pair(notes)]);
        }

        return Enumerable
            .Range(0, notes.Count + 1)
            .Select(left => Together(Under(_neck, notes.Take(left)), Under(_plan, notes.Skip(left))))
            .MinBy(figure => figure.HeightMm)!;
    }

    /// <summary>The note boxes side by side over the whole width.</summary>
    public static Figure Pair(IReadOnlyList<NoteBox> notes)
    {
        var width = (SheetBox.WidthMm - (BetweenMm * (notes.Count - 1))) / Math.Max(1, notes.Count);
        return Stack.Across(BetweenMm, [.. notes.Select(note => note.Draw(width))]);
    }

    private static Figure Under(Figure column, IEnumerable<NoteBox> notes) =>
        Stack.Down(NotesMm, [column, .. notes.Select(note => note.Draw(column.WidthMm))]);

    private Figure Together(Figure neck, Figure plan) =>
        _beside ? Stack.Across(BetweenMm, neck, plan) : Stack.Down(BetweenMm / 2, [neck, plan]);
}
