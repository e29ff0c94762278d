using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The music of a sheet: systems from top to bottom, with a sentence between them where bars are left out.</summary>
/// <param name="Opening">Systems before the sentence; all of them where nothing is left out.</param>
/// <param name="GoOn">How it goes on; empty where nothing is left out.</param>
/// <param name="Turn">Systems after the sentence.</param>
/// <param name="Remarks">For the teacher: which bars are printed, and what is lost with the others; empty where all are.</param>
internal sealed record SheetMusic(
    ImmutableArray<Figure> Opening,
    string GoOn,
    ImmutableArray<Figure> Turn,
    ImmutableArray<string> Remarks
)
{
    private const double SystemsMm = 3;
    private const double BetweenMm = 9;
    private const double NarrowestNotesMm = 70;
    private const double NotesMm = 3;

    /// <summary>The variation under it: a sentence and its systems; null for none.</summary>
    public SheetMusic? Variation { get; init; }

    /// <summary>Height of the systems alone, without sentences.</summary>
    public double HeightMm =>
        Opening.Concat(Turn).Sum(system => system.HeightMm)
        + (SystemsMm * (Opening.Length + Turn.Length - 1))
        + (Variation?.HeightMm ?? 0);

    /// <summary>The systems alone.</summary>
    public Figure Plain() => Stack.Down(SystemsMm, Parts());

    /// <summary>The variation; empty where there is none.</summary>
    public Figure Varied() =>
        Variation is { } variation ? Stack.Down(SystemsMm, variation.Parts("varied-")) : new Figure(0, 0, []);

    /// <summary>With the note boxes beside the last system; null where it is too long for that.</summary>
    public Figure? With(IReadOnlyList<NoteBox> notes)
    {
        var parts = Parts().ToList();
        var last = parts[^1];
        var width = SheetBox.WidthMm - last.WidthMm - BetweenMm;
        if (width < NarrowestNotesMm)
        {
            return null;
        }

        var boxes = Stack.Down(NotesMm, notes.Select(note => note.Draw(width)));
        return Stack.Down(SystemsMm, [.. parts.SkipLast(1), Stack.Across(BetweenMm, last, boxes)]);
    }

    private IEnumerable<Figure> Parts(string name = "") =>
        [
            .. Opening.Select((system, index) => Named(system, $"{name}system-{index}-")),
            .. Sentence(name),
            .. Turn.Select((system, index) => Named(system, $"{name}turn-{index}-")),
        ];

    private static Figure Named(Figure figure, string prefix) =>
        figure with
        {
            Marks = figure.At(default, prefix),
        };

    private IEnumerable<Figure> Sentence(string name)
    {
        if (GoOn.Length == 0)
        {
            yield break;
        }

        var block = TextBlock.Set(GoOn, SheetStyles.GoOn, SheetBox.WidthMm);
        yield return new Figure(
            SheetBox.WidthMm,
            block.HeightMm,
            [.. block.MarksAt(default, $"{name}go-on", $"{name}go-on")]
        );
    }
}
