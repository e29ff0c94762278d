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
            var letter = step.Groups["letter"].Value;
            var numbers = Numbers(step.Groups["numbers"].Value);
            if (letter is "M" or "m")
            {
                at = letter == "M" ? (numbers[0], numbers[1]) : (at.X + numbers[0], at.Y + numbers[1]);
                start = at;
                all.Add(([at], false, false));
                Assert.Equal(2, numbers.Count);
            }
            else if (letter == "z")
            {
                all[^1] = (all[^1].Points, all[^1].IsCurved, true);
                at = start;
            }
            else
            {
                all[^1].Points.AddRange(Steps(letter, numbers, at));
                all[^1] = (all[^1].Points, all[^1].IsCurved || letter == "c", all[^1].IsClosed);
                at = all[^1].Points[^1];
            }
        }

        return all;
    }

    // Where one step, or several of the same letter, lead.
    private static List<(double X, double Y)> Steps(
        string letter,
        List<double> numbers,
        (double X, double Y) at
    )
    {
        var (size, points) = (letter == "c" ? 6 : 2, new List<(double X, double Y)>());
        if (letter is "h" or "v")
        {
            var by = Assert.Single(numbers);
            return [letter == "h" ? (at.X + by, at.Y) : (at.X, at.Y + by)];
        }

        Assert.Contains(letter, new[] { "l", "c" });
        foreach (var step in numbers.Chunk(size))
        {
            points.AddRange(step.Chunk(2).Select(p => (at.X + p[0], at.Y + p[1])));
            at = points[^1];
        }

        return points;
    }

    private static List<double> Numbers(string text) =>
        [
            .. Number()
                .Matches(text)
                .Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture)),
        ];

    [GeneratedRegex(
        "(?<letter>[A-Za-z])(?<numbers>[^A-Za-z]*)",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Step();

    [GeneratedRegex(@"-?(\d+\.?\d*|\.\d+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();
}
