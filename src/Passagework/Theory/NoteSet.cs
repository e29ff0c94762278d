using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>A root and the notes above it: which pitch classes belong, and what the set is called.</summary>
public sealed record NoteSet
{
    private NoteSet(NoteName root, string? scale, ImmutableArray<int> semitones, ScaleFormula? formula)
    {
        Root = root;
        Scale = scale;
        Semitones = semitones;
        Formula = formula;
        Degrees = formula?.Degrees ?? DegreeChoice.For(semitones);
    }

    /// <summary>The root as the user named it.</summary>
    public NoteName Root { get; }

    /// <summary>The name of a known scale or arpeggio; null for a list of semitones.</summary>
    public string? Scale { get; }

    /// <summary>Ascending semitones above the root, from 0, each below 12; 1 to 12 of them.</summary>
    public ImmutableArray<int> Semitones { get; }

    /// <summary>
    /// What each note is called above the root, in the order of <see cref="Semitones"/>: those of the known formula with
    /// the same notes, for any other list names with as few signs and shared letters as can be.
    /// </summary>
    public ImmutableArray<ScaleDegree> Degrees { get; }

    /// <summary>Whether the third is minor and not major; scales of this type take their root names and key from minor.</summary>
    public bool IsMinor => Semitones.Contains(3) && !Semitones.Contains(4);

    /// <summary>The known formula with the same notes, whether or not the set is called by its name.</summary>
    internal ScaleFormula? Formula { get; }

    /// <summary>A known scale or arpeggio on a root.</summary>
    public static bool TryNamed(
        NoteName root,
        string scale,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out NoteSet? set
    )
    {
        set = Scales.Find(scale) is { } formula ? new NoteSet(root, scale, formula.Semitones, formula) : null;
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

        return new NoteSet(root, null, semitones, Scales.Find(semitones));
    }

    /// <summary>Whether the pitch class of a MIDI key belongs.</summary>
    public bool Contains(int midi) => Semitones.Contains(Above(midi));

    /// <summary>What a MIDI key is called above the root, such as b3; null for a key outside the set.</summary>
    public ScaleDegree? DegreeOf(int midi)
    {
        var index = Semitones.IndexOf(Above(midi));
        return index < 0 ? null : Degrees[index];
    }

    /// <summary>
    /// The same notes that many semitones higher. The root has its usual name there (<see cref="RootNames"/>); by
    /// whole octaves it keeps the name that the user gave it.
    /// </summary>
    public NoteSet Transposed(int semitones)
    {
        var shift = WholeNumbers.Modulo(semitones, 12);
        return shift == 0
            ? this
            : new NoteSet(RootNames.Usual(Root.PitchClass + shift, IsMinor), Scale, Semitones, Formula);
    }

    /// <summary>Content equality: the same root and the same notes under the same name.</summary>
    public bool Equals(NoteSet? other) =>
        other is not null
        && Root == other.Root
        && Scale == other.Scale
        && Semitones.SequenceEqual(other.Semitones);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Root, Scale, Semitones.Length);

    private int Above(int midi) => WholeNumbers.Modulo(midi - Root.PitchClass, 12);
}
