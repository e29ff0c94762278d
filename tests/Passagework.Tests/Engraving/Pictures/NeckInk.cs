using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Pictures;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving.Pictures;

/// <summary>Reads a drawn neck from its marks.</summary>
internal static class NeckInk
{
    public static IEnumerable<Mark> Of(Figure picture, string kind) =>
        picture.Marks.Where(mark => mark.Kind == kind);

    public static IEnumerable<Mark> Apart(Figure picture) =>
        picture.Marks.Where(mark =>
            mark.Kind is "fret-number" or "string-number" or "nut" or "capo"
            || mark.Kind.StartsWith("dot-played", StringComparison.Ordinal)
            || mark.Kind.StartsWith("dot-hollow", StringComparison.Ordinal)
        );

    public static IEnumerable<string> TextOutsideDots(Figure picture) =>
        Of(picture, "dot-text")
            .Where(text =>
            {
                var dot = picture.Marks.Single(mark => mark.Id == "dot-" + text.Id.Split('-')[2]);
                return !MarkBox.Of(dot).Holds(MarkBox.Of(text));
            })
            .Select(text => text.Id);

    public static IEnumerable<string> Misplaced(Figure picture, bool vertical)
    {
        var strings = Of(picture, "string").OfType<LineMark>().ToDictionary(mark => mark.Id);
        var wires = picture
            .Marks.OfType<LineMark>()
            .Where(mark => mark.Kind is "fret-wire")
            .ToDictionary(mark => mark.Id, mark => vertical ? mark.From.Y : mark.From.X);
        foreach (
            var dot in picture.Marks.Where(mark =>
                mark.Id.StartsWith("dot-", StringComparison.Ordinal) && mark.Kind != "dot-text"
            )
        )
        {
            var place = Place.TryParse(dot.Id[4..], out var read)
                ? read
                : throw new InvalidOperationException(dot.Id);
            var box = MarkBox.Of(dot);
            var (x, y) = ((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
            var line = strings[$"string-{place.String}"];
            var (along, across, on) = vertical ? (y, x, line.From.X) : (x, y, line.From.Y);
            var isOn = Math.Abs(across - on) < 1e-6;
            if (place.Fret > 0 && wires.TryGetValue($"wire-{place.Fret - 1}", out var before))
            {
                isOn &= Math.Abs(((before + wires[$"wire-{place.Fret}"]) / 2) - along) < 1e-6;
            }

            if (!isOn)
            {
                yield return dot.Id;
            }
        }
    }
}
