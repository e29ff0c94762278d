namespace Passagework.Sound.Strings;

/// <summary>How fast the partials of a string die, by frequency and by the length that sounds.</summary>
/// <remarks>
/// Amplitude falls as exp(−σt) with σ(ω) = Pass·f₁ + ½(Air + Friction·ω + Bending·ω³): the loss factor of Woodhouse
/// 2004 (air, friction, bending of a stiff string), and what the two ends take at every reflection, which is the
/// same for every partial and so grows with the fundamental f₁.
/// </remarks>
/// <param name="Pass">Share of amplitude the ends take in one period, as an exponent.</param>
/// <param name="Air">Loss to the air, 1/s.</param>
/// <param name="Friction">Loss factor of friction in the string, without unit.</param>
/// <param name="Bending">Loss factor of bending per (rad/s)², s².</param>
internal readonly record struct LossLaw(double Pass, double Air, double Friction, double Bending)
{
    /// <summary>Gain of one pass round the loop at an angular frequency; within (0, 1).</summary>
    public double Gain(double omega, double fundamental) =>
        Math.Exp(-Pass - ((Air + (omega * (Friction + (Bending * omega * omega)))) / (2 * fundamental)));

    /// <summary>Seconds in which a partial falls by 60 dB.</summary>
    public double Sixty(double omega, double fundamental) =>
        Math.Log(1000) / (-fundamental * Math.Log(Gain(omega, fundamental)));

    /// <summary>The law with a soft thing resting on the string.</summary>
    public LossLaw Damped(LossLaw by) =>
        new(Pass + by.Pass, Air + by.Air, Friction + by.Friction, Bending + by.Bending);
}
