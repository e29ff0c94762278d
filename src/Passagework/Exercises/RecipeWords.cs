using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>The words of recipes.</summary>
public static class RecipeWords
{
    /// <summary>How strokes follow one another.</summary>
    public static WordList<Technique> Techniques { get; } =
        new(
            "technique",
            ("alternate", Technique.Alternate),
            ("metric", Technique.Metric),
            ("all-down", Technique.AllDown),
            ("all-up", Technique.AllUp),
            ("economy", Technique.Economy),
            ("sweep", Technique.Sweep),
            ("rake", Technique.Rake),
            ("hybrid", Technique.Hybrid),
            ("fingers", Technique.Fingers),
            ("legato", Technique.Legato),
            ("free", Technique.Free)
        );

    /// <summary>The first stroke of a line.</summary>
    public static WordList<FirstStroke> FirstStrokes { get; } =
        new("first stroke", ("down", FirstStroke.Down), ("up", FirstStroke.Up), ("best", FirstStroke.Best));

    /// <summary>Which fingers of the picking hand take turns.</summary>
    public static WordList<FingerOrder> FingerOrders { get; } =
        new(
            "order of fingers",
            ("i-m", FingerOrder.IndexMiddle),
            ("m-a", FingerOrder.MiddleRing),
            ("p-i", FingerOrder.ThumbIndex),
            ("p-i-m-a", FingerOrder.Pima)
        );

    /// <summary>The picking hand's action for one note.</summary>
    public static WordList<Stroke> Strokes { get; } =
        new(
            "stroke",
            ("down", Stroke.Down),
            ("up", Stroke.Up),
            ("none", Stroke.None),
            ("p", Stroke.Thumb),
            ("i", Stroke.Index),
            ("m", Stroke.Middle),
            ("a", Stroke.Ring)
        );

    /// <summary>Which way the cells go.</summary>
    public static WordList<Direction> Directions { get; } =
        new(
            "direction",
            ("up", Direction.Up),
            ("down", Direction.Down),
            ("up-and-down", Direction.UpAndDown),
            ("down-and-up", Direction.DownAndUp)
        );

    /// <summary>What happens where the line turns.</summary>
    public static WordList<Turn> Turns { get; } =
        new("turn", ("back-to-back", Turn.BackToBack), ("shared", Turn.Shared));

    /// <summary>How the line ends.</summary>
    public static WordList<Ending> Endings { get; } =
        new(
            "ending",
            ("none", Ending.None),
            ("hold-last", Ending.HoldLast),
            ("hold-root", Ending.HoldRoot),
            ("fill-bar", Ending.FillBar)
        );

    /// <summary>How the notes of a cell are to sound.</summary>
    public static WordList<NoteSound> Sounds { get; } =
        new(
            "sound",
            ("normal", NoteSound.Normal),
            ("palm-muted", NoteSound.PalmMuted),
            ("staccato", NoteSound.Staccato),
            ("let-ring", NoteSound.LetRing)
        );

    /// <summary>How a written note is reached when it is not struck.</summary>
    public static WordList<Slur> Slurs { get; } =
        new("slur", ("hammer", Slur.Hammer), ("pull", Slur.Pull), ("slide", Slur.Slide));

    /// <summary>Which side of a box; true for the higher.</summary>
    internal static WordList<bool> Sides { get; } = new("side", ("low", false), ("high", true));

    /// <summary>Where slides are allowed; true for shifts.</summary>
    internal static WordList<bool> Slides { get; } =
        new("kind of slides", ("none", false), ("at-shifts", true));

    /// <summary>The slurs of a cell that have a word; true for same-string.</summary>
    internal static WordList<bool> CellSlurWords { get; } =
        new("kind of slurs", ("none", false), ("same-string", true));
}
