using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>How one note is struck, with what the picking hand remembers.</summary>
/// <param name="Action">The stroke or the finger; never none.</param>
/// <param name="String">The string that sounds.</param>
/// <param name="Anchor">The plectrum's string, or the string under the index finger.</param>
internal readonly record struct StrokeState(Stroke Action, int String, int Anchor);

/// <summary>What lies between two struck notes.</summary>
/// <param name="Slots">Pulses of the grid between them, at least 1 (used where a grid drives the hand).</param>
/// <param name="Slot">The pulse of the later note, counted from the first beat of bar 1.</param>
/// <param name="Restarts">Whether a rest of at least a felt beat lies between them.</param>
internal readonly record struct StrokeStep(int Slots, long Slot, bool Restarts);
