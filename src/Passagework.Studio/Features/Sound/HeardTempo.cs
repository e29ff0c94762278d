using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Sound;

/// <summary>The tempi that can be played, and how they are typed.</summary>
internal static class HeardTempo
{
    /// <summary>Lowest tempo in felt beats a minute (chosen by us).</summary>
    public const double LeastBpm = 10;

    /// <summary>Highest tempo.</summary>
    public const double MostBpm = 1000;

    /// <summary>Felt beats a minute as typed, with a point or a comma.</summary>
    public static Outcome<double> Read(string? text) =>
        double.TryParse(
            (text ?? "").Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var bpm
        )
            ? Check(bpm)
            : NoTempo(Quote.Short(text ?? ""));

    /// <summary>The same tempo, if it can be played.</summary>
    public static Outcome<double> Check(double bpm) =>
        bpm is >= LeastBpm and <= MostBpm ? bpm : NoTempo(bpm.ToString(CultureInfo.InvariantCulture));

    private static Fault NoTempo(string what) =>
        new($"{what} is no tempo", "tempo", "10 to 1000 beats a minute");
}
