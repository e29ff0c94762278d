using System.Collections.Immutable;

namespace Passagework.Hands.Explaining;

/// <summary>One move of an exercise explained: what each hand does to reach a note, how long it takes, on what that rests.</summary>
/// <example>
/// 4:5 to 6:8, first to little finger over a skipped string: 225 ms of the 250 ms that 60 beats a minute allow.
/// </example>
public sealed record MoveExplanation
{
    /// <summary>The note that is reached, counted from 0.</summary>
    public required int Note { get; init; }

    /// <summary>The fretting hand.</summary>
    public required MoveSentence Fretting { get; init; }

    /// <summary>The picking hand.</summary>
    public required MoveSentence Picking { get; init; }

    /// <summary>The meeting of both hands.</summary>
    public required MoveSentence Together { get; init; }

    /// <summary>What makes up the fretting hand's time, the largest part first.</summary>
    public required ImmutableArray<ParameterUse> FrettingUses { get; init; }

    /// <summary>What makes up the picking hand's time, the largest part first.</summary>
    public required ImmutableArray<ParameterUse> PickingUses { get; init; }

    /// <summary>What of these times is a guess of ours, in a sentence; null where nothing is.</summary>
    public string? Assumptions
    {
        get
        {
            var guessed = FrettingUses
                .Concat(PickingUses)
                .Where(use => use.Parameter.Mark == Provenance.Assumed)
                .Select(use => use.Words)
                .ToList();
            return guessed.Count == 0 ? null : $"Assumed, not published: {string.Join("; ", guessed)}.";
        }
    }

    /// <summary>The sentences in the order in which they are read.</summary>
    public ImmutableArray<MoveSentence> Sentences => [Fretting, Picking, Together];

    /// <summary>The move that leads to a note, at a tempo in felt beats a minute.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such note, or the tempo is not above 0.</exception>
    public static MoveExplanation Of(Measurement measured, int note, double bpm)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(note);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(note, measured.Realization.Notes.Length);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bpm);
        return new MoveExplainer(measured, bpm).Explain(note);
    }
}
