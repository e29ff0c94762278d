using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>A root and the notes above it: which pitch classes belong, and what the set is called.</summary>
public sealed record NoteSet
{
    private NoteSet(NoteName root, string? scale, ImmutableArray<int> semitones)
    {
        Root = root;
        Scale = scale;
        Semitones = semitones;
    }

    /// <summary>The root as the user named it.</summary>
    public NoteName Root { get; }

    /// <summary>The name of a known scale or arpeggio; null for a list of semitones.</summary>
    public string? Scale { get; }

    /// <summary>Ascending semitones above the root, from 0, each below 12; 1 to 12 of them.</summary>
    public ImmutableArray<int> Semitones { get; }

    /// <summary>A known scale or arpeggio on a root.</summary>
    public static bool TryNamed(
        NoteName root,
        string scale,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out NoteSet? set
    )
    {
        set = Scales.Find(scale) is { } formula ? new NoteSet(root, scale, formula.Semitones) : null;
        return set is not null;
    }

    /// <summary>Any set of notes: ascending semitones from 0, each below 12.</summary>
    /// <exception cref="ArgumentException">Empty, not from 0, not ascending or not below 12.</exception>
    public static NoteSet Listed(NoteName root, ImmutableArray<int> semitones)
    {
        var ascending = semitones.Zip(semitones.Skip(1)).All(pair => pair.First < pair.Second);
        if (semitones.IsEmpty || semitones[0] != 0 || semitones[^1] > 11 || !ascending)
        {
            throw new ArgumentException("Ascending semitones from 0, each below 12.", nameof(semitones));
        }

        return new NoteSet(root, null, semitones);
    }

    /// <summary>Whether the pitch class of a MIDI key belongs.</summary>
    public bool Contains(int midi) => Semitones.Contains(WholeNumbers.Modulo(midi - Root.PitchClass, 12));

    /// <summary>Content equality: the same root and the same notes under the same name.</summary>
    public bool Equals(NoteSet? other) =>
        other is not null
        && Root == other.Root
        && Scale == other.Scale
        && Semitones.SequenceEqual(other.Semitones);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Root, Scale, Semitones.Length);
}
