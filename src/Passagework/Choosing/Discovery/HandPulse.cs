using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Choosing.Discovery;

/// <summary>Turns demands into loads raised to the power of the windowed load, for a line in even pulses.</summary>
internal sealed class HandPulse
{
    private readonly double _gap;
    private readonly double _power;
    private readonly double[] _later;

    private HandPulse(double[] basis, double gap, int longest)
    {
        (Basis, _gap) = (basis, gap);
        _power = WindowedLoad.Power(HandConstants.WindowMoves, HandConstants.WindowTolerance);
        _later = [.. Enumerable.Range(0, longest + 1).Select(gaps => Math.Pow(Math.Max(1, gaps), -_power))];
    }

    /// <summary>The player's numbers.</summary>
    public double[] Basis { get; }

    /// <summary>For the rhythm of a line and a player.</summary>
    public static HandPulse Of(Line line, Player player)
    {
        var gaps = new LineTimes(line).Gaps;
        return new HandPulse(player.Parameters.Basis, gaps.Length > 0 ? gaps[0] : 1, 1024);
    }

    /// <summary>A demand of one pulse's time.</summary>
    public double Raise(double milliseconds) => Math.Pow(milliseconds / (1000 * _gap), _power);

    /// <summary>What a raised load is multiplied with where there is time for several pulses.</summary>
    public double Over(int pulses) => pulses < _later.Length ? _later[pulses] : Math.Pow(pulses, -_power);

    /// <summary>The load of the heaviest window.</summary>
    /// <param name="sum">Of its raised loads.</param>
    /// <param name="moves">Of the whole line.</param>
    public double Load(double sum, int moves) =>
        Math.Pow(sum / Math.Min(HandConstants.WindowMoves, moves), 1 / _power);
}
