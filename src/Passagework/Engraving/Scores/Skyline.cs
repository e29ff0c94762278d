using System.Buffers;

namespace Passagework.Engraving.Scores;

/// <summary>The outline of the ink above or below a staff: how far it reaches at each place along the line.</summary>
/// <remarks>Held in strips an eighth of a space wide; ink counts for every strip that it touches. Heights point outward.</remarks>
internal sealed class Skyline
{
    private const double Strip = 0.125;
    private readonly double[] _reach;
    private readonly int _count;

    /// <summary>A line of so many spaces with no ink.</summary>
    public Skyline(double width)
    {
        _count = (int)Math.Ceiling(Math.Max(0, width) / Strip) + 1;
        _reach = ArrayPool<double>.Shared.Rent(_count);
        Array.Fill(_reach, double.NegativeInfinity, 0, _count);
    }

    /// <summary>Raises it over a stretch.</summary>
    public void Raise(double from, double to, double reach)
    {
        var (first, last) = Strips(from, to);
        for (var i = first; i <= last; i++)
        {
            _reach[i] = Math.Max(_reach[i], reach);
        }
    }

    /// <summary>How far ink reaches over a stretch; minus infinity where there is none.</summary>
    public double Over(double from, double to)
    {
        var (first, last) = Strips(from, to);
        var reach = double.NegativeInfinity;
        for (var i = first; i <= last; i++)
        {
            reach = Math.Max(reach, _reach[i]);
        }

        return reach;
    }

    /// <summary>How far ink reaches anywhere.</summary>
    public double Highest() => Over(0, _count * Strip);

    /// <summary>Gives its memory back, for the next system; it is not to be used any more.</summary>
    public void Release() => ArrayPool<double>.Shared.Return(_reach);

    /// <summary>The largest sum of this and another skyline at one place: how far apart the two must lie.</summary>
    public double Against(Skyline other)
    {
        var sum = double.NegativeInfinity;
        for (var i = 0; i < Math.Min(_count, other._count); i++)
        {
            sum = Math.Max(sum, _reach[i] + other._reach[i]);
        }

        return sum;
    }

    private (int First, int Last) Strips(double from, double to) =>
        (
            Math.Clamp((int)Math.Floor(from / Strip), 0, _count - 1),
            Math.Clamp((int)Math.Floor(to / Strip), 0, _count - 1)
        );
}
