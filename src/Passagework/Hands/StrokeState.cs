using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>How one note is struck, with what the picking hand remembers.</summary>
/// <param name="Action">The stroke or the finger; never none.</param>
/// <param name="String">The string that sounds; of a chord that of its highest tone.</param>
/// <param name="Anchor">The plectrum's string when all is struck, or the string under the index finger.</param>
internal readonly record struct StrokeState(Stroke Action, int String, int Anchor)
{
    /// <summary>How a chord is struck; null for a single note.</summary>
    public StruckChord? Chord { get; init; }

    /// <summary>The string at which the stroke begins.</summary>
    public int Entry => EndOf(fromCeiling: Action == Stroke.Down);

    /// <summary>The string at which the stroke ends.</summary>
    public int Exit => EndOf(fromCeiling: Action != Stroke.Down);

    /// <summary>Whether the plectrum alone makes it.</summary>
    public bool IsPicked => Action is Stroke.Down or Stroke.Up && Chord is not { IsBrush: false };

    /// <summary>Every actor with its string.</summary>
    public IEnumerable<StrokeState> Parts()
    {
        if (Chord is not { } chord)
        {
            return [this];
        }

        var anchor = Anchor;
        return chord.Strokes.Zip(chord.Strings, (stroke, number) => new StrokeState(stroke, number, anchor));
    }

    private int EndOf(bool fromCeiling)
    {
        if (Chord is not { IsBrush: true } brush)
        {
            return String;
        }

        return fromCeiling ? brush.Ceiling : brush.Floor;
    }
}

/// <summary>What lies between two struck notes.</summary>
/// <param name="Slots">Pulses of the grid between them, at least 1 (used where a grid drives the hand).</param>
/// <param name="Slot">The pulse of the later note, counted from the first beat of bar 1.</param>
/// <param name="Restarts">Whether a rest of at least a felt beat lies between them.</param>
internal readonly record struct StrokeStep(int Slots, long Slot, bool Restarts);
