using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>
/// Writes path data in pixels to the tenth, each step from the point before; steps are taken between rounded points, so that
/// rounding does not add up.
/// </summary>
internal sealed class PathSteps
{
    private const int TenthsPerPx = 10;
    private (int X, int Y) _at;
    private (int X, int Y) _start;
    private char _last;

    /// <summary>What has been written.</summary>
    public StringBuilder Data { get; } = new();

    /// <summary>Begins a figure.</summary>
    public void Move(Point to)
    {
        Pair('m', Rounded(to));
        (_start, _last) = (_at, 'm');
    }

    /// <summary>A straight step.</summary>
    public void Line(Point to)
    {
        var target = Rounded(to);
        if (target.Y == _at.Y)
            Single('h', target.X - _at.X);
        else if (target.X == _at.X)
            Single('v', target.Y - _at.Y);
        else
            Pair('l', target);
        _at = target;
    }

    /// <summary>A step to a point whatever its direction, for a line that is not drawn.</summary>
    public void Corner(Point to) => Pair('l', Rounded(to));

    /// <summary>A figure without length.</summary>
    public void Dot(Point at)
    {
        Move(at);
        Single('h', 0);
    }

    /// <summary>A cubic curve.</summary>
    public void Curve(Point lean, Point back, Point to)
    {
        var from = _at;
        foreach (var point in new[] { lean, back, to })
        {
            _at = from;
            Pair('c', Rounded(point));
        }
    }

    /// <summary>Goes back to where the figure began.</summary>
    public void Close()
    {
        Data.Append('z');
        (_at, _last) = (_start, 'z');
    }

    // The same letter again is left out, but for the beginning of a figure, where it would mean a line.
    private void Pair(char letter, (int X, int Y) target)
    {
        var right = target.X - _at.X;
        if (_last != letter || letter == 'm')
            Data.Append(Data.Length == 0 ? 'M' : letter);
        else if (right >= 0)
            Data.Append(' ');

        Number(right);
        if (target.Y >= _at.Y)
            Data.Append(' ');
        Number(target.Y - _at.Y);
        (_at, _last) = (target, letter);
    }

    private void Single(char letter, int tenths)
    {
        Data.Append(letter);
        Number(tenths);
        _last = letter;
    }

    private void Number(int tenths) => Data.Number(tenths / (double)TenthsPerPx, CompactSvg.PxPlaces);

    private static (int X, int Y) Rounded(Point px) => (Whole(px.X), Whole(px.Y));

    private static int Whole(double px) => (int)Math.Round(px * TenthsPerPx, MidpointRounding.AwayFromZero);
}
