using Passagework.Foundation;

namespace Passagework.Repertoire;

/// <summary>How the time to the next note compares with the time before it, coarsely.</summary>
public enum RhythmStep
{
    /// <summary>About the same.</summary>
    Even,

    /// <summary>Two thirds of it or less.</summary>
    Quicker,

    /// <summary>One and a half times as long or longer.</summary>
    Slower,
}

/// <summary>Compares times between notes.</summary>
internal static class RhythmSteps
{
    private static readonly Fraction Quick = Fraction.Of(2, 3);
    private static readonly Fraction Slow = Fraction.Of(3, 2);

    /// <summary>The limits are assumed: they tell a dotted figure, a triplet among eighths and doubled values apart.</summary>
    public static RhythmStep Of(Fraction before, Fraction after)
    {
        if (after <= before * Quick)
        {
            return RhythmStep.Quicker;
        }

        return after >= before * Slow ? RhythmStep.Slower : RhythmStep.Even;
    }
}
