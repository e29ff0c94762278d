using System.Globalization;
using SkiaSharp;

namespace Passagework.Tests.Engraving.Press;

/// <summary>The dots of a picture as light, 0 black to 255 white.</summary>
internal sealed class Picture
{
    private const int Half = 127;

    private readonly byte[] _light;

    private Picture(int width, int height, byte[] light)
    {
        Width = width;
        Height = height;
        _light = light;
    }

    public int Width { get; }

    public int Height { get; }

    public static Picture Of(byte[] png)
    {
        using var coloured = SKBitmap.Decode(png);
        using var grey = coloured.Copy(SKColorType.Gray8);
        return new(grey.Width, grey.Height, grey.Bytes);
    }

    public static Picture From(string file) => Of(File.ReadAllBytes(file));

    /// <summary>A grey map as poppler writes it: <c>P5</c>, width, height, 255, the dots (Netpbm's format).</summary>
    public static Picture FromGreyMap(string file)
    {
        var bytes = File.ReadAllBytes(file);
        var at = 0;
        var words = Enumerable.Range(0, 4).Select(_ => Word(bytes, ref at)).ToList();
        var (width, height) = (Whole(words[1]), Whole(words[2]));
        return words is ["P5", _, _, "255"]
            ? new(width, height, bytes[at..(at + (width * height))])
            : throw new InvalidDataException(file);
    }

    /// <summary>Sum of what is not white, in dots.</summary>
    public double Ink => _light.Sum(light => 255 - light) / 255.0;

    /// <summary>A part cut out; white where there is nothing.</summary>
    public Picture Part(int left, int top, int width, int height)
    {
        var light = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var isInside = left + x < Width && top + y < Height;
                light[(y * width) + x] = isInside ? At(left + x, top + y) : byte.MaxValue;
            }
        }

        return new(width, height, light);
    }

    /// <summary>The light of one dot.</summary>
    public byte At(int x, int y) => _light[(y * Width) + x];

    /// <summary>
    /// How far two pictures differ over the area that both have: the mean difference in light, 0 to 1, and the share of
    /// dots that nothing in the other picture explains: they differ by more than half from every dot at most one away.
    /// </summary>
    public (double Mean, double Foreign) Against(Picture other)
    {
        var (width, height) = (Math.Min(Width, other.Width), Math.Min(Height, other.Height));
        long sum = 0;
        var foreign = 0;
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var difference = Math.Abs(At(x, y) - other.At(x, y));
                sum += difference;
                if (difference > Half && (IsForeign(this, other, x, y) || IsForeign(other, this, x, y)))
                    foreign++;
            }
        }

        var dots = (double)width * height;
        return (sum / 255.0 / dots, foreign / dots);
    }

    private static string Word(byte[] bytes, ref int at)
    {
        var from = at;
        while (bytes[at] > ' ')
            at++;

        return System.Text.Encoding.ASCII.GetString(bytes, from, at++ - from);
    }

    private static int Whole(string word) => int.Parse(word, CultureInfo.InvariantCulture);

    private static bool IsForeign(Picture one, Picture other, int x, int y)
    {
        for (var v = Math.Max(0, y - 1); v <= Math.Min(other.Height - 1, y + 1); v++)
        {
            for (var u = Math.Max(0, x - 1); u <= Math.Min(other.Width - 1, x + 1); u++)
            {
                if (Math.Abs(one.At(x, y) - other.At(u, v)) <= Half)
                    return false;
            }
        }

        return true;
    }
}
