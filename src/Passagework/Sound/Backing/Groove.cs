using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Sound.Backing;

/// <summary>How the backing divides the beat, and what it plays.</summary>
public enum Groove
{
    /// <summary>Even eighths.</summary>
    Straight,

    /// <summary>The first and last of three in every beat, drums and bass alike.</summary>
    Shuffle,

    /// <summary>A swung cymbal over a walking bass.</summary>
    Swung,

    /// <summary>Three in every beat, all of them heard.</summary>
    TwelveEight,
}

/// <summary>The words and bounds of grooves.</summary>
public static class Grooves
{
    /// <summary>The words for people.</summary>
    public static WordList<Groove> Words { get; } =
        new(
            "groove",
            ("straight", Groove.Straight),
            ("shuffle", Groove.Shuffle),
            ("swung", Groove.Swung),
            ("12/8", Groove.TwelveEight)
        );

    /// <summary>What goes with the metre and swing of a line where nothing is asked.</summary>
    public static Groove Usual(Meter meter, Swing swing)
    {
        if (meter.IsCompound)
        {
            return Groove.TwelveEight;
        }

        return swing.IsStraight ? Groove.Straight : Groove.Swung;
    }

    /// <summary>Why a groove can't be played in a metre, if it can't.</summary>
    public static Fault? Check(Groove groove, Meter meter) =>
        meter.IsCompound && groove == Groove.Straight
            ? new Fault($"the beats of {meter} divide in three, not in two", "groove", "12/8 or shuffle")
            : null;
}
