namespace Passagework.Hands;

/// <summary>How a note is reached from the one before it.</summary>
internal enum Reach
{
    /// <summary>It is struck.</summary>
    Struck,

    /// <summary>Without a stroke, by a finger coming down or leaving.</summary>
    Slurred,

    /// <summary>Without a stroke; the same finger may slide.</summary>
    SlurredOrSlid,

    /// <summary>By the same finger sliding along the string, and no other way.</summary>
    Slid,
}
