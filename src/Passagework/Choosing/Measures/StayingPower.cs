namespace Passagework.Choosing.Measures;

/// <summary>Whether an exercise is still work when the player has grown: how much of the room up to the fastest useful tempo is left.</summary>
/// <remarks>
/// A measure proposed by this project. With v the least ceilings at the first and the last level, the room used is
/// ln(v last / v first) / ln(cap / v first), and the measure what is left of it, 0 to 1. It is high for a thing nobody gets better at,
/// too, so the used room stands beside it.
/// </remarks>
public static class StayingPower
{
    /// <summary>Notes a second beyond which more speed is no more music: sixteenths at 200 (chosen by us).</summary>
    public const double Cap = 200 * 4 / 60.0;

    /// <summary>Notes a second below which it is no music yet (chosen by us).</summary>
    public const double Floor = 1;

    /// <summary>The room that is used, 0 at none; 1 where the first level is at the cap already.</summary>
    /// <param name="first">Least ceiling at the first level, above 0.</param>
    /// <param name="last">At the last level.</param>
    /// <param name="cap">Same unit as the two.</param>
    public static double Used(double first, double last, double cap = Cap) =>
        first >= cap ? 1 : Math.Log(last / first) / Math.Log(cap / first);

    /// <summary>What is left of the room, 0 to 1; 0 for an exercise that the first level can't play as music.</summary>
    /// <inheritdoc cref="Used"/>
    public static double Of(double first, double last, double cap = Cap) =>
        first < Floor ? 0 : Math.Clamp(1 - Used(first, last, cap), 0, 1);
}
