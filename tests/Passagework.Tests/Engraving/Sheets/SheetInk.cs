using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Sheets;

/// <summary>Rules of geometry for a printed sheet, read off its marks.</summary>
internal static class SheetInk
{
    public static IEnumerable<string> Wrong(Page page, Box box) =>
        [
            .. InkBoxes.Outside(page.Marks.Where(mark => mark.Kind != "foot"), box),
            .. InkBoxes.Outside(page.Marks, Printable(page)),
            .. BlockOverlaps(page),
            .. InkBoxes.SharedNames(page.Marks),
        ];

    private static bool IsMusic(Mark mark) =>
        new[] { "system-", "turn-", "varied-turn-" }.Any(name =>
            mark.Id.StartsWith(name, StringComparison.Ordinal)
        );

    private static Box Printable(Page page) => new(10, 10, page.WidthMm - 10, page.HeightMm - 10);

    // A system of music counts as one; its own marks are the score's to keep apart.
    public static IEnumerable<string> BlockOverlaps(Page page)
    {
        var systems = page
            .Marks.Where(mark => IsMusic(mark))
            .GroupBy(mark =>
                string.Join(
                    '-',
                    mark.Id.Split('-').Take(mark.Id.StartsWith("varied", StringComparison.Ordinal) ? 3 : 2)
                )
            )
            .Select(group =>
                (Name: group.Key, Box: group.Select(MarkBox.Of).Aggregate((all, box) => all.With(box)))
            )
            .ToList();
        var words = page
            .Marks.Where(mark => mark is TextMark or GlyphMark && mark.Kind != "dot-text" && !IsMusic(mark))
            .Concat(
                page.Marks.Where(mark =>
                    mark.Kind.StartsWith("dot-played", StringComparison.Ordinal)
                    || mark.Kind.StartsWith("dot-hollow", StringComparison.Ordinal)
                )
            )
            .ToList();
        foreach (var pair in InkBoxes.Overlaps(words))
        {
            yield return pair;
        }

        foreach (var (name, box) in systems)
        {
            foreach (var mark in words.Where(mark => MarkBox.Of(mark).Overlaps(box)))
            {
                yield return $"{mark.Id} and {name}";
            }

            foreach (
                var other in systems.Where(other =>
                    string.CompareOrdinal(other.Name, name) > 0 && other.Box.Overlaps(box)
                )
            )
            {
                yield return $"{other.Name} and {name}";
            }
        }
    }
}
