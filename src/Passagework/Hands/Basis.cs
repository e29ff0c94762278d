namespace Passagework.Hands;

/// <summary>
/// The products of player parameters in which every demand is linear: a demand is a short sum of coefficient times
/// entry. Geometry goes into the coefficients, the player into the entries, so that 200 draws of the parameters
/// re-use the same coefficients.
/// </summary>
internal static class Basis
{
    /// <summary>Press times the factor of finger 1 to 4: entries 0 to 3; the first is A itself.</summary>
    public const int Press = 0;

    /// <summary>Lift times the finger's factor.</summary>
    public const int Lift = 4;

    /// <summary>Same-finger cycle times the finger's factor.</summary>
    public const int Cycle = 8;

    /// <summary>Roll times the finger's factor.</summary>
    public const int Roll = 12;

    /// <summary>(1 − ω) b_L.</summary>
    public const int Cross = 16;

    /// <summary>(1 − ω) a_sh.</summary>
    public const int ShiftStart = 17;

    /// <summary>(1 − ω) b_sh.</summary>
    public const int ShiftSlope = 18;

    /// <summary>H.</summary>
    public const int HalfCycle = 19;

    /// <summary>b_R.</summary>
    public const int PickCross = 20;

    /// <summary>S.</summary>
    public const int SweepStep = 21;

    /// <summary>X.</summary>
    public const int FingerAfterPick = 22;

    /// <summary>M_im.</summary>
    public const int Alternation = 23;

    /// <summary>C_R.</summary>
    public const int PluckAgain = 24;

    /// <summary>(1 − ω) b_R.</summary>
    public const int PluckCross = 25;

    /// <summary>σ.</summary>
    public const int Synchrony = 26;

    /// <summary>(1 − ω) times each of the entries up to <see cref="Cross"/>, in their order.</summary>
    public const int Apart = 27;

    /// <summary>Number of entries.</summary>
    public const int Count = Apart + Cross + 1;

    // Order of the parameter file: A Λ C R b_L a_sh b_sh ω φ1 φ2 φ3 φ4 H b_R S X M_im C_R σ.
    private const int Overlap = 7;
    private const int FirstFactor = 8;

    // The parameter that gives each entry its size.
    private static readonly string[] MainParameter =
    [
        .. Enumerable.Repeat("A", 4),
        .. Enumerable.Repeat("Λ", 4),
        .. Enumerable.Repeat("C", 4),
        .. Enumerable.Repeat("R", 4),
        "b_L",
        "a_sh",
        "b_sh",
        "H",
        "b_R",
        "S",
        "X",
        "M_im",
        "C_R",
        "b_R",
        "σ",
    ];

    private static readonly bool[] Assumed =
    [
        .. MainParameter
            .Concat(MainParameter.Take(Cross + 1))
            .Select(id =>
                ParameterFile.Parameters.Single(known => known.Id == id).Mark == Provenance.Assumed
            ),
    ];

    /// <summary>Whether an entry's size is a guess of ours.</summary>
    public static bool IsAssumed(int entry) => Assumed[entry];

    /// <summary>The parameter that gives an entry its size.</summary>
    public static Parameter ParameterOf(int entry) =>
        ParameterFile.Parameters.Single(known =>
            known.Id == MainParameter[entry < Apart ? entry : entry - Apart]
        );

    /// <summary>The entries for the parameter values in the order of the parameter file.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        var entries = new double[Count];
        for (var finger = 0; finger < 4; finger++)
        {
            var factor = values[FirstFactor + finger];
            entries[Press + finger] = values[0] * factor;
            entries[Lift + finger] = values[1] * factor;
            entries[Cycle + finger] = values[2] * factor;
            entries[Roll + finger] = values[3] * factor;
        }

        var apart = 1 - values[Overlap];
        entries[Cross] = apart * values[4];
        entries[ShiftStart] = apart * values[5];
        entries[ShiftSlope] = apart * values[6];
        entries[HalfCycle] = values[12];
        entries[PickCross] = values[13];
        entries[SweepStep] = values[14];
        entries[FingerAfterPick] = values[15];
        entries[Alternation] = values[16];
        entries[PluckAgain] = values[17];
        entries[PluckCross] = apart * values[13];
        entries[Synchrony] = values[18];
        for (var entry = 0; entry <= Cross; entry++)
        {
            entries[Apart + entry] = apart * entries[entry];
        }

        return entries;
    }
}
