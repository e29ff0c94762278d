using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Engraving.Scores;

/// <summary>Chooses the accidentals of a piece, note by note.</summary>
/// <remarks>
/// A sign holds to the bar line in its own octave. A note that returns to the key in the next bar is reminded of it once,
/// in brackets.
/// </remarks>
internal sealed class SignWriter(ScoreKey key)
{
    private readonly HashSet<SpelledPitch> _altered = [];
    private HashSet<(int Letter, int Octave)> _reminders = [];
    private HeldSigns _held = new(key);

    /// <summary>Begins the next bar.</summary>
    public void NextBar()
    {
        _reminders =
        [
            .. _altered
                .Where(pitch => IsForeign(pitch) && _held.At(pitch) == pitch.Name.Alteration)
                .Select(Line),
        ];
        _altered.Clear();
        _held = new HeldSigns(key);
    }

    /// <summary>The sign of the next note.</summary>
    public HeadSign Next(SpelledPitch pitch, bool tiedBack)
    {
        var shown = !tiedBack && _held.Sign(pitch);
        if (shown)
        {
            _altered.Add(pitch);
        }

        var courtesy = !tiedBack && _reminders.Remove(Line(pitch)) && !shown;
        return new HeadSign(pitch.Name.Alteration, shown || courtesy, courtesy, IsForeign(pitch));
    }

    private bool IsForeign(SpelledPitch pitch) =>
        pitch.Name.Alteration != key.AlterationOf(pitch.Name.Letter);

    private static (int Letter, int Octave) Line(SpelledPitch pitch) => (pitch.Name.Letter, pitch.Octave);
}
