using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>A fingering of a whole line, with what it cost the planner.</summary>
/// <param name="Notes">One for each note of the line.</param>
/// <param name="Cost">The planner's objective: powers of moves against the time there is, plus small preferences.</param>
public sealed record Fingering(ImmutableArray<FingeredNote> Notes, double Cost);

/// <summary>How one note is fretted.</summary>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">1 to 4; 0 for an open string.</param>
/// <param name="Position">Fret of the first finger; 1 where nothing is fretted.</param>
public readonly record struct FingeredNote(Place Place, int Finger, int Position)
{
    /// <summary>The further tones of a chord, from high to low; empty for a single note.</summary>
    public ImmutableArray<FingeredTone> With => Form is null ? [] : Form.Tones.RemoveAt(0);

    /// <summary>The note and what sounds with it, from high to low.</summary>
    public IEnumerable<FingeredTone> Tones => Form is null ? [new FingeredTone(Place, Finger)] : Form.Tones;

    internal FretForm? Form { get; init; }

    internal FretState State => new(Place, Finger, Position) { Form = Form };

    internal static FingeredNote Of(FretState state) =>
        new(state.Place, state.Finger, state.Position) { Form = state.Form };
}

/// <summary>What a fingering is planned for.</summary>
public enum FingeringAim
{
    /// <summary>Least effort over the whole line.</summary>
    LeastEffort,

    /// <summary>First the least possible hardest move, then least effort among the fingerings that reach it.</summary>
    EasiestWorstMove,
}
