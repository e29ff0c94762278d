using System.Globalization;
using System.Text;
using SkiaSharp;

namespace Passagework.Engraving.Fonts;

/// <summary>Writes a glyph's outline as SVG path data: whole font units, each step from the point before.</summary>
internal static class OutlineData
{
    public static string Of(SKPath path)
    {
        var data = new StringBuilder();
        var points = new SKPoint[4];
        var (x, y) = (0, 0);
        using var steps = path.CreateRawIterator();
        for (var verb = steps.Next(points); verb != SKPathVerb.Done; verb = steps.Next(points))
        {
            if (verb == SKPathVerb.Close)
            {
                data.Append('z');
                continue;
            }

            var (letter, from, to) = Shape(verb);
            data.Append(letter);
            var start = (x, y);
            for (var i = from; i <= to; i++)
            {
                (x, y) = (Whole(points[i].X), Whole(points[i].Y));
                Step(data, verb == SKPathVerb.Move ? x : x - start.x, i == from);
                Step(data, verb == SKPathVerb.Move ? y : y - start.y, false);
            }
        }

        return data.ToString();
    }

    private static (char Letter, int From, int To) Shape(SKPathVerb verb) =>
        verb switch
        {
            SKPathVerb.Move => ('M', 0, 0),
            SKPathVerb.Line => ('l', 1, 1),
            SKPathVerb.Quad => ('q', 1, 2),
            SKPathVerb.Cubic => ('c', 1, 3),
            _ => throw new InvalidDataException($"A glyph with a piece of the kind {verb}."),
        };

    private static void Step(StringBuilder data, int value, bool first)
    {
        if (!first && value >= 0)
            data.Append(' ');

        data.Append(value.ToString(CultureInfo.InvariantCulture));
    }

    private static int Whole(float value) => (int)MathF.Round(value);
}
