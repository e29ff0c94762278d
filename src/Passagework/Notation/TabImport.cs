using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>What was read from a tab.</summary>
/// <param name="Recipe">The line written note by note; fingers and strokes that were written are locks.</param>
/// <param name="Warnings">What had to be guessed or left out, in order; the first hundred, then how many more.</param>
/// <param name="Kept">Signs and text that a line can't carry, with their places; at most a thousand.</param>
public sealed record TabImport(
    Recipe Recipe,
    ImmutableArray<TabWarning> Warnings,
    ImmutableArray<TabMark> Kept
);

/// <summary>Something that had to be guessed or left out.</summary>
/// <param name="Text">What, as a phrase without a full stop.</param>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Column">Column of the line, from 1.</param>
public sealed record TabWarning(string Text, int Line, int Column)
{
    /// <summary>Such as <c>line 3, column 7: …</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"line {Line}, column {Column}: {Text}");
}

/// <summary>A sign or text that was seen and kept but is no part of the line.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As it was written, or its meaning where that is known.</param>
/// <param name="Line">Line of the text, from 1.</param>
/// <param name="Column">Column of the line, from 1.</param>
/// <param name="Note">Index of the note that it belongs to; null when it belongs to none.</param>
public sealed record TabMark(TabMarkKind Kind, string Text, int Line, int Column, int? Note = null);

/// <summary>Kinds of signs that a line can't carry.</summary>
public enum TabMarkKind
{
    /// <summary>A line of text.</summary>
    Text,

    /// <summary>A character that has no known meaning.</summary>
    Unknown,

    /// <summary>A bend; the text says how far.</summary>
    Bend,

    /// <summary>The end of a bend.</summary>
    Release,

    /// <summary>Vibrato.</summary>
    Vibrato,

    /// <summary>A stroke without pitch; it stands as a rest in the line.</summary>
    Dead,

    /// <summary>A nearly silent note.</summary>
    Ghost,

    /// <summary>A natural harmonic.</summary>
    NaturalHarmonic,

    /// <summary>An artificial harmonic.</summary>
    ArtificialHarmonic,

    /// <summary>A hammer by the picking hand.</summary>
    Tap,

    /// <summary>A trill.</summary>
    Trill,

    /// <summary>A slide into a note from nowhere.</summary>
    SlideIn,

    /// <summary>A slide away from a note.</summary>
    SlideOut,

    /// <summary>Palm muting, let ring or staccato over some notes.</summary>
    Sound,
}
