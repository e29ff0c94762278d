using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>How a note of a move is sounded.</summary>
/// <remarks>The default leaves it open.</remarks>
public enum MoveAction
{
    /// <summary>Not told apart.</summary>
    Any,

    /// <summary>Plectrum towards the floor.</summary>
    Down,

    /// <summary>Plectrum towards the ceiling.</summary>
    Up,

    /// <summary>Thumb.</summary>
    Thumb,

    /// <summary>Index finger.</summary>
    Index,

    /// <summary>Middle finger.</summary>
    Middle,

    /// <summary>Ring finger.</summary>
    Ring,

    /// <summary>A finger of the fretting hand coming down.</summary>
    Hammer,

    /// <summary>A finger of the fretting hand leaving the string.</summary>
    Pull,

    /// <summary>The same finger moving along the string.</summary>
    Slide,
}

/// <summary>Tells how notes of a realization are sounded.</summary>
internal static class MoveActions
{
    private const string Signs = "-DUpimaHPS";

    /// <summary>The action of a note; a slur of an open kind rises as a hammer-on and falls as a pull-off, or slides on one finger.</summary>
    public static MoveAction Of(PlayedNote note, PlayedNote? before) =>
        note.Stroke switch
        {
            Stroke.Down => MoveAction.Down,
            Stroke.Up => MoveAction.Up,
            Stroke.Thumb => MoveAction.Thumb,
            Stroke.Index => MoveAction.Index,
            Stroke.Middle => MoveAction.Middle,
            Stroke.Ring => MoveAction.Ring,
            _ => Slurred(note, before),
        };

    /// <summary>One sign: D, U, p, i, m, a, H, P or S.</summary>
    public static char Sign(MoveAction action) => Signs[(int)action];

    private static MoveAction Slurred(PlayedNote note, PlayedNote? before) =>
        note.Note.Slur switch
        {
            Slur.Hammer => MoveAction.Hammer,
            Slur.Pull => MoveAction.Pull,
            Slur.Slide => MoveAction.Slide,
            _ when before is { Finger: > 0 } && before.Finger == note.Finger => MoveAction.Slide,
            _ => before is null || note.Place.Fret > before.Place.Fret ? MoveAction.Hammer : MoveAction.Pull,
        };
}
