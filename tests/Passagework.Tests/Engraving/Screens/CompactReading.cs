using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Passagework.Tests.Engraving.Screens;

/// <summary>
/// Reads compact markup back into single things, each as one line of text: lines, figures, dots, curves, signs and letters,
/// with their class, thickness and places in pixels. Knows nothing of how the markup is made.
/// </summary>
internal sealed partial class CompactReading
{
    private readonly List<string> _things = [];

    private CompactReading(XElement svg)
    {
        foreach (var element in svg.Descendants().Where(element => !element.HasElements))
        {
            switch (element.Name.LocalName)
            {
                case "path" when Value(element, "data-note") is { } note:
                    Hits.Add((int.Parse(note, CultureInfo.InvariantCulture), Subpaths(element)[0].Points));
                    break;
                case "path" when Value(element, "marker-mid") is { } marker:
                    ReadSigns(element, marker["url(#".Length..^1]);
                    break;
                case "path":
                    ReadPath(element);
                    break;
                case "text":
                    ReadText(element);
                    break;
            }
        }
    }

    /// <summary>What takes the pointer: the note and the corners.</summary>
    public List<(int Note, List<(double X, double Y)> Corners)> Hits { get; } = [];

    /// <summary>The things in order of their text.</summary>
    public IEnumerable<string> Things => _things.Order(StringComparer.Ordinal);

    public static CompactReading Of(string svg) => new(XElement.Parse(svg));

    /// <summary>A place as the things have it.</summary>
    public static string At(double x, double y) => $"{Tenth(x)},{Tenth(y)}";

    public static string Tenth(double px) =>
        (Math.Round(px, 1, MidpointRounding.AwayFromZero) + 0.0).ToString(
            "0.0",
            CultureInfo.InvariantCulture
        );

    private void ReadSigns(XElement element, string marker)
    {
        var points = Subpaths(element)[0].Points;
        // The first and the last corner bear no sign.
        foreach (var (x, y) in points.Skip(1).SkipLast(1))
        {
            _things.Add($"sign {marker} {Value(element, "stroke-width")} {At(x, y)}");
        }
    }

    private void ReadPath(XElement element)
    {
        if (element.Attribute("transform")?.Value is { } transform)
        {
            _things.Add($"outline {Class(element)} {transform}");
            return;
        }

        var isLine = Class(element).Contains("pw-line", StringComparison.Ordinal);
        var pen = $"{Class(element)} {Value(element, "stroke-width")} {Value(element, "stroke-dasharray")}";
        foreach (var (points, isCurved, isClosed) in Subpaths(element))
        {
            var kind = isCurved ? "curve" : "figure";
            kind = isLine && points.Count == 2 ? "line" : kind;
            kind = points is [var one, var other] && one == other ? "dot" : kind;
            var places = kind == "dot" ? points.Take(1) : points;
            _things.Add(
                $"{kind} {pen} {string.Join(" ", places.Select(p => At(p.X, p.Y)))}{(isClosed ? " closed" : "")}"
            );
        }
    }

    private void ReadText(XElement element)
    {
        var xs = Numbers(Value(element, "x")!);
        var y = Numbers(Value(element, "y")!)[0];
        var anchor = Value(element, "text-anchor");
        var style = $"{Class(element)} {Value(element, "font-size")}";
        if (anchor != "middle" || element.Value.Length != xs.Count)
        {
            _things.Add($"words {style} {anchor} {At(xs[0], y)} {element.Value}");
            return;
        }

        for (var i = 0; i < xs.Count; i++)
        {
            _things.Add($"letter {style} {At(xs[i], y)} {element.Value[i]}");
        }
    }

    // An attribute of the element or of the nearest group around it.
    private static string? Value(XElement element, string name) =>
        element
            .AncestorsAndSelf()
            .Select(outer => outer.Attribute(name)?.Value)
            .FirstOrDefault(v => v is not null);

    private static string Class(XElement element) => Value(element, "class") ?? "";

    private static List<(List<(double X, double Y)> Points, bool IsCurved, bool IsClosed)> Subpaths(
        XElement path
    )
    {
        var all = new List<(List<(double X, double Y)> Points, bool IsCurved, bool IsClosed)>();
        var (at, start) = ((X: 0.0, Y: 0.0), (X: 0.0, Y: 0.0));
        foreach (Match step in Step().Matches(path.Attribute("d")!.Value))
        {
            var letter = step.Groups[1].Value;
            var numbers = Numbers(step.Groups[2].Value);
            switch (letter)
            {
                case "M" or "m":
                    at = letter == "M" ? (numbers[0], numbers[1]) : (at.X + numbers[0], at.Y + numbers[1]);
                    start = at;
                    all.Add(([at], false, false));
                    Assert.Equal(2, numbers.Count);
                    break;
                case "h" or "v":
                    at = letter == "h" ? (at.X + numbers[0], at.Y) : (at.X, at.Y + numbers[0]);
                    all[^1].Points.Add(at);
                    Assert.Single(numbers);
                    break;
                case "l":
                    foreach (var pair in numbers.Chunk(2))
                    {
                        at = (at.X + pair[0], at.Y + pair[1]);
                        all[^1].Points.Add(at);
                    }

                    break;
                case "c":
                    foreach (var curve in numbers.Chunk(6))
                    {
                        all[^1].Points.AddRange(curve.Chunk(2).Select(p => (at.X + p[0], at.Y + p[1])));
                        at = all[^1].Points[^1];
                    }

                    all[^1] = (all[^1].Points, true, all[^1].IsClosed);
                    break;
                case "z":
                    all[^1] = (all[^1].Points, all[^1].IsCurved, true);
                    at = start;
                    break;
                default:
                    throw new InvalidDataException(letter);
            }
        }

        return all;
    }

    private static List<double> Numbers(string text) =>
        [
            .. Number()
                .Matches(text)
                .Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture)),
        ];

    [GeneratedRegex("([A-Za-z])([^A-Za-z]*)")]
    private static partial Regex Step();

    [GeneratedRegex(@"-?(\d+\.?\d*|\.\d+)")]
    private static partial Regex Number();
}
