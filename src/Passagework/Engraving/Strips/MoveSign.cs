using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>What is out of the ordinary in a move.</summary>
public enum MoveKind
{
    /// <summary>Strings are passed over.</summary>
    Skip,

    /// <summary>One finger tilts to the same fret of the next string.</summary>
    Roll,

    /// <summary>One finger leaves and comes down at another place.</summary>
    SameFinger,

    /// <summary>The hand moves up the neck.</summary>
    ShiftUp,

    /// <summary>The hand moves down the neck.</summary>
    ShiftDown,

    /// <summary>One stroke runs on to the next string.</summary>
    Sweep,
}

/// <summary>The sign over a move.</summary>
/// <param name="Kind">What it means.</param>
/// <param name="Strings">Strings passed over, for a skip.</param>
internal readonly record struct MoveSign(MoveKind Kind, int Strings = 0)
{
    /// <summary>The sign of the fretting hand: of several the one that weighs most.</summary>
    public static MoveSign? Fretting(PlayedNote from, PlayedNote to)
    {
        var passed = Math.Abs(from.Place.String - to.Place.String) - 1;
        return (from, to) switch
        {
            _ when from.Position < to.Position => new MoveSign(MoveKind.ShiftUp),
            _ when from.Position > to.Position => new MoveSign(MoveKind.ShiftDown),
            _ when to.Finger > 0 && from.Finger == to.Finger && from.Place != to.Place => new MoveSign(
                passed == 0 && from.Place.Fret == to.Place.Fret ? MoveKind.Roll : MoveKind.SameFinger
            ),
            _ => passed > 0 ? new MoveSign(MoveKind.Skip, passed) : null,
        };
    }

    /// <summary>The sign of the picking hand, from stroke to stroke.</summary>
    public static MoveSign? Picking(PlayedNote from, PlayedNote to)
    {
        var passed = Math.Abs(from.Place.String - to.Place.String) - 1;
        if (passed > 0)
        {
            return new MoveSign(MoveKind.Skip, passed);
        }

        var picked = IsPicked(from) && IsPicked(to);
        return picked && StrokeChange.Of(StateOf(from), StateOf(to)).Kind == ChangeKind.SweepStep
            ? new MoveSign(MoveKind.Sweep)
            : null;
    }

    private static bool IsPicked(PlayedNote note) => note.Stroke is Stroke.Down or Stroke.Up;

    private static StrokeState StateOf(PlayedNote note) =>
        new(note.Stroke, note.Place.String, note.Place.String);
}
