namespace Passagework.Hands;

/// <summary>The constants of the model under their names in code; each is explained in the parameter file.</summary>
internal static class HandConstants
{
    public static readonly double ContactShare = ParameterFile.Constant("contactShare");
    public static readonly double BehindLastFretMm = ParameterFile.Constant("behindLastFretMm");
    public static readonly double BehindFretMm = ParameterFile.Constant("behindFretMm");
    public static readonly double ComfortShare = ParameterFile.Constant("comfortShare");
    public static readonly double StretchGain = ParameterFile.Constant("stretchGain");
    public static readonly double ExtensionGain = ParameterFile.Constant("extensionGain");
    public static readonly double ContractionGain = ParameterFile.Constant("contractionGain");
    public static readonly double PadHalfWidthMm = ParameterFile.Constant("padHalfWidthMm");
    public static readonly double InwardFactor = ParameterFile.Constant("inwardFactor");
    public static readonly double CrowdingFactor = ParameterFile.Constant("crowdingFactor");
    public static readonly double PullOffFactor = ParameterFile.Constant("pullOffFactor");
    public static readonly double HammerFromNowhereFactor = ParameterFile.Constant("hammerFromNowhereFactor");
    public static readonly double ShiftAfterOpenFactor = ParameterFile.Constant("shiftAfterOpenFactor");
    public static readonly double PullOffPreparation = ParameterFile.Constant("pullOffPreparation");
    public static readonly double DeviationWeight = ParameterFile.Constant("deviationWeight");
    public static readonly double StrokeHalfDepthMm = ParameterFile.Constant("strokeHalfDepthMm");
    public static readonly double InsideFactor = ParameterFile.Constant("insideFactor");
    public static readonly double BlockedFactor = ParameterFile.Constant("blockedFactor");
    public static readonly double RakedStringShare = ParameterFile.Constant("rakedStringShare");
    public static readonly double BrushedStringShare = ParameterFile.Constant("brushedStringShare");
    public static readonly double BarredStringShare = ParameterFile.Constant("barredStringShare");
    public static readonly double FormFingerShare = ParameterFile.Constant("formFingerShare");
    public static readonly double ChordOverlapShare = ParameterFile.Constant("chordOverlapShare");
    public static readonly double DownPreference = ParameterFile.Constant("downPreference");
    public static readonly double RingFingerFactor = ParameterFile.Constant("ringFingerFactor");
    public static readonly double ThumbAgainFactor = ParameterFile.Constant("thumbAgainFactor");
    public static readonly double ThumbFingerFactor = ParameterFile.Constant("thumbFingerFactor");
    public static readonly double BackwardCrossingFactor = ParameterFile.Constant("backwardCrossingFactor");
    public static readonly double AnchorStepShare = ParameterFile.Constant("anchorStepShare");
    public static readonly double WindowSameString = ParameterFile.Constant("windowSameString");
    public static readonly double WindowOtherString = ParameterFile.Constant("windowOtherString");
    public static readonly double WindowQuantile = ParameterFile.Constant("windowQuantile");
    public static readonly int WindowMoves = (int)ParameterFile.Constant("windowMoves");
    public static readonly double WindowTolerance = ParameterFile.Constant("windowTolerance");
    public static readonly double FatigueShare = ParameterFile.Constant("fatigueShare");
    public static readonly double RelaxedLoad = ParameterFile.Constant("relaxedLoad");
    public static readonly double FatigueSeconds = ParameterFile.Constant("fatigueSeconds");

    private static readonly int CostPower = (int)ParameterFile.Constant("costPower");
    private static readonly double[,] Spans = SpanTable();

    /// <summary>Largest span of two fingers, 1 to 4, lower first, for a hand of size 1.</summary>
    public static double SpanMm(int lower, int higher) => Spans[lower, higher];

    /// <summary>The power at which a planner counts a move's time, between the mean (1) and the worst case.</summary>
    public static double Cost(double time)
    {
        var power = 1.0;
        for (var i = 0; i < CostPower; i++)
        {
            power *= time;
        }

        return power;
    }

    private static double[,] SpanTable()
    {
        var table = new double[5, 5];
        foreach (var (lower, higher) in new[] { (1, 2), (2, 3), (3, 4), (1, 3), (2, 4), (1, 4) })
        {
            table[lower, higher] = ParameterFile.Constant($"span{lower}{higher}Mm");
        }

        return table;
    }
}
