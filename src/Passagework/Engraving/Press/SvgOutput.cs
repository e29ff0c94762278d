using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>Short numbers, and text that cannot break out of its place.</summary>
internal static class SvgOutput
{
    /// <summary>Places after the point of a length in millimetres: a hundredth is finer than any printer's dot.</summary>
    public const int MmPlaces = 2;

    private const char Unprintable = '\uFFFD';

    /// <summary>A number with so many places at most, without zeros at either end: <c>-.5</c>, <c>12</c>, <c>3.25</c>.</summary>
    public static StringBuilder Number(this StringBuilder svg, double value, int places = MmPlaces)
    {
        var unit = Unit(places);
        var scaled = Scaled(value, unit);
        if (scaled < 0)
            svg.Append('-');

        var (whole, rest) = Math.DivRem(Math.Abs(scaled), unit);
        if (whole != 0 || rest == 0)
            svg.Append(whole);
        if (rest == 0)
        {
            return svg;
        }

        svg.Append('.');
        for (unit /= 10; rest > 0; unit /= 10)
        {
            svg.Append((char)('0' + (rest / unit)));
            rest %= unit;
        }

        return svg;
    }

    /// <summary>Two numbers as path data and attributes take them: parted by a space or by the second one's sign.</summary>
    public static StringBuilder Pair(this StringBuilder svg, Point point)
    {
        svg.Number(point.X);
        if (Scaled(point.Y, Unit(MmPlaces)) >= 0)
            svg.Append(' ');

        return svg.Number(point.Y);
    }

    /// <summary>An attribute with its value escaped; nothing for null.</summary>
    public static StringBuilder Attribute(this StringBuilder svg, string name, string? value) =>
        value is null ? svg : svg.Append(' ').Append(name).Append("=\"").Escaped(value).Append('"');

    /// <summary>An attribute that is a length in millimetres.</summary>
    public static StringBuilder Attribute(this StringBuilder svg, string name, double mm) =>
        svg.Append(' ').Append(name).Append("=\"").Number(mm).Append('"');

    /// <summary>Text with markup made harmless; what XML 1.0 cannot hold becomes U+FFFD.</summary>
    public static StringBuilder Escaped(this StringBuilder svg, string text)
    {
        Span<char> pair = stackalloc char[2];
        foreach (var letter in text.EnumerateRunes())
        {
            switch (letter.Value)
            {
                case '&':
                    svg.Append("&amp;");
                    break;
                case '<':
                    svg.Append("&lt;");
                    break;
                case '>':
                    svg.Append("&gt;");
                    break;
                case '"':
                    svg.Append("&quot;");
                    break;
                case '\'':
                    svg.Append("&#39;");
                    break;
                // A bare line end or tab in an attribute would be read back as a space.
                case '\t' or '\n' or '\r':
                    svg.Append("&#").Append(letter.Value).Append(';');
                    break;
                case < ' ' or 0xFFFE or 0xFFFF:
                    svg.Append(Unprintable);
                    break;
                default:
                    svg.Append(pair[..letter.EncodeToUtf16(pair)]);
                    break;
            }
        }

        return svg;
    }

    private static long Unit(int places)
    {
        var unit = 1L;
        for (var i = 0; i < places; i++)
            unit *= 10;

        return unit;
    }

    private static long Scaled(double value, long unit) =>
        (long)Math.Round(value * unit, MidpointRounding.AwayFromZero);
}
