using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>The figure that is moved along the path.</summary>
public sealed record Cell
{
    /// <summary>Steps along the path from the cell's start, null a rest; 1 to 16 entries, at least one a note.</summary>
    public required ImmutableArray<int?> Offsets { get; init; }

    /// <summary>Accented entries of the cell.</summary>
    public ImmutableArray<int> Accents { get; init; } = [0];

    /// <summary>Length of each entry in pulses; empty when all last one pulse.</summary>
    public ImmutableArray<Fraction> Durations { get; init; } = [];

    /// <summary>Which entries are slurred.</summary>
    public CellSlurs Slurs { get; init; } = CellSlurs.None;

    /// <summary>How the notes are to sound.</summary>
    public NoteSound Sound { get; init; } = NoteSound.Normal;

    /// <summary>Content equality.</summary>
    public bool Equals(Cell? other) =>
        other is not null
        && Sound == other.Sound
        && Offsets.SequenceEqual(other.Offsets)
        && Accents.SequenceEqual(other.Accents)
        && Durations.SequenceEqual(other.Durations)
        && Slurs.Equals(other.Slurs);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Offsets.Length, Accents.Length, Sound);
}

/// <summary>Which entries of a cell are reached without a stroke.</summary>
/// <param name="SameString">Within the cell a stroke only on its first note, on a string change and on a repeated note.</param>
/// <param name="Entries">Entries reached without a stroke; used when <paramref name="SameString"/> is false.</param>
public sealed record CellSlurs(bool SameString, ImmutableArray<int> Entries)
{
    /// <summary>Every note is struck.</summary>
    public static CellSlurs None { get; } = new(SameString: false, []);

    /// <summary>Content equality.</summary>
    public bool Equals(CellSlurs? other) =>
        other is not null && SameString == other.SameString && Entries.SequenceEqual(other.Entries);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(SameString, Entries.Length);
}

/// <summary>How the notes of a cell are to sound.</summary>
public enum NoteSound
{
    /// <summary>Each note lasts until the next.</summary>
    Normal,

    /// <summary>Damped by the picking hand near the bridge.</summary>
    PalmMuted,

    /// <summary>Short.</summary>
    Staccato,

    /// <summary>Strings ring on.</summary>
    LetRing,
}
