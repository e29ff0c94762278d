using System.Collections.Immutable;

namespace Passagework.Theory;

/// <summary>Names pitches: one letter per degree of the scale, with the exceptions that readers expect.</summary>
/// <remarks>
/// Formulas and rules are common practice. From the root as the user names it every degree has its letter, except:
/// <list type="number">
/// <item>The blue note of a minor blues scale is a raised fourth where the line goes on upward and a lowered fifth where
/// it falls or stops, never Cb or Fb.</item>
/// <item>A chromatic line has sharps on the way up and flats on the way down; notes of the root's major key keep their
/// key names.</item>
/// <item>In place of a double flat stands its neighbour name, also in place of a double sharp unless it is the leading
/// note of harmonic or melodic minor.</item>
/// </list>
/// Notes outside the set are named from the key of its root, else sharp on the way up and flat on the way down.
/// </remarks>
public static class Speller
{
    /// <summary>The names of a set in ascending order; the blue note a lowered fifth, chromatic notes by degree.</summary>
    public static ImmutableArray<NoteName> Names(NoteSet notes) => SetNames.Ascending(notes);

    /// <summary>A spelled pitch for each key of a line.</summary>
    /// <remarks>
    /// A line goes on to the next key that differs. Inside one cell no pitch class has two names: the first time
    /// decides.
    /// </remarks>
    /// <param name="notes">Root and scale; null when none is known, which leaves sharps up and flats down.</param>
    /// <param name="keys">MIDI keys in the order played.</param>
    /// <param name="cells">The cell that each note belongs to, null for none; null when there are no cells.</param>
    /// <exception cref="ArgumentException">As many cells as keys are needed.</exception>
    public static ImmutableArray<SpelledPitch> Spell(
        NoteSet? notes,
        IReadOnlyList<int> keys,
        IReadOnlyList<int?>? cells = null
    )
    {
        if (cells is not null && cells.Count != keys.Count)
        {
            throw new ArgumentException("One entry for each key.", nameof(cells));
        }

        var names = notes is null ? null : new SetNames(notes);
        var onward = Onward(keys);
        var spelled = ImmutableArray.CreateBuilder<SpelledPitch>(keys.Count);
        var inCell = new NoteName?[12];
        var motion = 0;
        for (var i = 0; i < keys.Count; i++)
        {
            motion = onward[i] == 0 ? motion : onward[i];
            if (i == 0 || cells?[i] is not { } cell || cells[i - 1] != cell)
            {
                Array.Clear(inCell);
            }

            var fresh =
                names?.At(keys[i], onward[i], motion)
                ?? (motion < 0 ? PlainNames.Falling(keys[i]) : PlainNames.Rising(keys[i]));
            var name = inCell[fresh.PitchClass] ??= fresh;
            spelled.Add(SpelledPitch.At(name, keys[i]));
        }

        return spelled.MoveToImmutable();
    }

    // For each key whether the next different one is higher (1), lower (−1) or missing (0).
    private static int[] Onward(IReadOnlyList<int> keys)
    {
        var onward = new int[keys.Count];
        for (var i = keys.Count - 2; i >= 0; i--)
        {
            var step = Math.Sign(keys[i + 1].CompareTo(keys[i]));
            onward[i] = step == 0 ? onward[i + 1] : step;
        }

        return onward;
    }
}
