using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>A chord by its common symbol, such as Am7 or C/E.</summary>
/// <param name="Root">The root as written.</param>
/// <param name="Kind">What stands above it.</param>
/// <param name="Bass">The lowest note where it is not the root.</param>
public sealed record Chord(NoteName Root, ChordKind Kind, NoteName? Bass = null)
{
    /// <summary>The chord tones from the root upward, spelled; a foreign bass note is not among them.</summary>
    public ImmutableArray<NoteName> Tones =>
        [.. Kind.Degrees.Select(degree => DegreeNames.Name(Root, degree))];

    /// <summary>
    /// Reads a root (letter, at most one <c>#</c> or <c>b</c>), a kind and perhaps a slash and a bass note. A flat sign
    /// belongs to the root: Bb5 is the fifth on Bb.
    /// </summary>
    public static bool TryParse(
        string? text,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Chord? chord
    )
    {
        chord = null;
        if (string.IsNullOrEmpty(text))
        {
            return false;
        }

        var signed = text.Length > 1 && text[1] is '#' or 'b' ? 2 : 1;
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        var end = slash < 0 ? text.Length : slash;
        NoteName? bass = null;
        if (slash >= 0)
        {
            if (!NoteName.TryParse(text[(slash + 1)..], out var written) || Math.Abs(written.Alteration) > 1)
            {
                return false;
            }

            bass = written;
        }

        if (end < signed || !NoteName.TryParse(text[..signed], out var root))
        {
            return false;
        }

        chord = ChordKind.Find(text[signed..end]) is { } kind ? new Chord(root, kind, bass) : null;
        return chord is not null;
    }

    /// <summary>Whether the pitch class of a MIDI key is a chord tone or the bass note.</summary>
    public bool Contains(int midi)
    {
        var pitchClass = WholeNumbers.Modulo(midi, 12);
        return Bass?.PitchClass == pitchClass || Tones.Any(tone => tone.PitchClass == pitchClass);
    }

    /// <summary>What a MIDI key is above the root, such as b7; null when it is no chord tone.</summary>
    public ScaleDegree? DegreeOf(int midi)
    {
        foreach (var degree in Kind.Degrees)
        {
            if ((midi - Root.PitchClass - degree.Semitones) % 12 == 0)
            {
                return degree;
            }
        }

        return null;
    }

    /// <summary>The usual symbol, which reads back as the same chord.</summary>
    public override string ToString() => $"{Root}{Kind.Symbol}{(Bass is { } bass ? "/" + bass : "")}";
}
