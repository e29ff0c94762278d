using Passagework.Instrument;

namespace Passagework.Sound.Takes;

/// <summary>One note of a take with what it does to a string.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Note">The note of the score, for one stroke too many the note that it follows.</param>
/// <param name="Place">Where it is played; for a missed note, where it should have been.</param>
/// <param name="Expected">The MIDI key of the score; null for a stroke too many.</param>
/// <param name="Event">What sounds, or would have; its key without the take's tuning.</param>
internal sealed record TakeStroke(
    TruthKind Kind,
    TakeNote Note,
    Place Place,
    int? Expected,
    StringEvent Event
)
{
    /// <summary>Whether it is heard.</summary>
    public bool Sounds => Kind != TruthKind.Missed;
}
