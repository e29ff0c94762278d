using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;

namespace Passagework.Bench;

/// <summary>An A4 page of some 1,200 marks, as a sheet of sixteen bars has them, printed in every way.</summary>
[MemoryDiagnoser]
public class PressBenchmarks
{
    private const double SpaceMm = 1.75;

    private static readonly Page Sheet = new(210, 297, [.. Systems(), .. Words()]);
    private static readonly Document OnePage = new([Sheet], "Sixteen bars");

    /// <summary>As a file: at most 15 ms.</summary>
    [Benchmark(Baseline = true)]
    public string Svg() => SvgWriter.Write(Sheet, SvgStyle.Print).OrThrow();

    /// <summary>For a page of the studio, which brings the fonts along.</summary>
    [Benchmark]
    public string Svg_with_text() =>
        SvgWriter.Write(Sheet, SvgStyle.Screen with { Words = SvgWords.Text, StyleSheet = false }).OrThrow();

    /// <summary>At most 50 ms.</summary>
    [Benchmark]
    public byte[] Pdf() => PdfWriter.Write(OnePage).OrThrow();

    /// <summary>At most 120 ms.</summary>
    [Benchmark]
    public byte[] Png_150_dpi() => PngWriter.Write(Sheet, 150).OrThrow();

    /// <summary>In colours.</summary>
    [Benchmark]
    public byte[] Png_150_dpi_in_colour() => PngWriter.Write(Sheet, 150, Palette.Light).OrThrow();

    /// <summary>For print.</summary>
    [Benchmark]
    public byte[] Png_300_dpi() => PngWriter.Write(Sheet, 300).OrThrow();

    /// <summary>The ink box of every mark.</summary>
    [Benchmark]
    public Box Boxes() => Sheet.Marks.Select(MarkBox.Of).Aggregate((all, box) => all.With(box));

    private static IEnumerable<Mark> Systems()
    {
        for (var system = 0; system < 4; system++)
        {
            var top = 50 + (system * 58.0);
            foreach (var line in Enumerable.Range(0, 11))
            {
                var y = top + (line * SpaceMm) + (line > 4 ? 12 : 0);
                yield return Line($"line-{system}-{line}", new(15, y), new(195, y)) with
                {
                    Ink = Ink.Staff,
                };
            }

            foreach (var mark in Enumerable.Range(0, 64).SelectMany(note => Note((system * 64) + note, top)))
                yield return mark;
        }
    }

    private static ImmutableArray<Mark> Note(int note, double top)
    {
        var x = 24 + (note % 64 * 2.65);
        var y = top + ((6 - (note % 9)) * SpaceMm / 2) + 2;
        return
        [
            new GlyphMark(Glyphs.NoteheadBlack, new(x, y), SpaceMm)
            {
                Id = $"head-{note}",
                Kind = "head",
                Note = note,
            },
            Line($"stem-{note}", new(x + 2, y), new(x + 2, y - 6)) with
            {
                Note = note,
            },
            new TextMark($"{note % 15}", new(x + 1, top + 24 + (note % 6 * 2.6)), Face.SansBold, 3.4)
            {
                Id = $"number-{note}",
                Kind = "tab-number",
                Anchor = Anchor.Middle,
                Note = note,
            },
            new GlyphMark(
                note % 2 == 0 ? Glyphs.StringsDownBow : Glyphs.StringsUpBow,
                new(x, top - 9),
                SpaceMm
            )
            {
                Id = $"stroke-{note}",
                Kind = "stroke",
                Note = note,
            },
            .. note % 4 == 0 ? Group(note, x, top) : [],
        ];
    }

    private static IEnumerable<Mark> Group(int note, double x, double top)
    {
        yield return new PolygonMark([
            new(x, top - 4),
            new(x + 8, top - 5),
            new(x + 8, top - 4),
            new(x, top - 3),
        ])
        {
            Id = $"beam-{note}",
            Kind = "beam",
            Note = note,
        };
        yield return new CurveMark(
            new(x, top + 20),
            new(x + 2, top + 18),
            new(x + 6, top + 18),
            new(x + 8, top + 20),
            0.175,
            0.385
        )
        {
            Id = $"slur-{note}",
            Kind = "slur",
            Note = note,
        };
    }

    private static IEnumerable<Mark> Words() =>
        Enumerable
            .Range(0, 12)
            .Select(i => new TextMark(
                "Let the fourth finger lead; keep the wrist still and listen to the last note of each five.",
                new(15, 20 + (i * 2)),
                (Face)(i % 8),
                3.6
            )
            {
                Id = $"words-{i}",
                Kind = "words",
            });

    private static LineMark Line(string id, Point from, Point to) =>
        new(from, to, 0.21) { Id = id, Kind = "line" };
}
