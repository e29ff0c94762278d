namespace Passagework.Engraving.Drawing;

/// <summary>What a mark is drawn in; a back end or a style sheet turns it into a colour.</summary>
public enum Ink
{
    /// <summary>Words, music, actions.</summary>
    Main,

    /// <summary>Captions and second lines.</summary>
    Soft,

    /// <summary>Staff, tab and string lines.</summary>
    Staff,

    /// <summary>Lines that part tables and fields.</summary>
    Rule,

    /// <summary>The faintest lines; nothing is lost if they vanish.</summary>
    Hair,

    /// <summary>The fretting hand.</summary>
    Fretting,

    /// <summary>The picking hand.</summary>
    Picking,

    /// <summary>Ground of what is chosen.</summary>
    Shade,

    /// <summary>The paper itself: numbers on filled dots.</summary>
    Paper,
}
