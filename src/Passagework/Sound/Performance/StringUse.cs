using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Sound.Performance;

/// <summary>What later notes need of one tone's string, finger and hand; positive infinity where nothing does.</summary>
/// <param name="String">When the string is played again.</param>
/// <param name="Slurs">Whether that is without a stroke.</param>
/// <param name="Finger">When the finger first stands on another string or fret.</param>
/// <param name="Rolls">Whether it only rolls there: the same fret of a neighbouring string.</param>
/// <param name="Leaves">When the finger first stands on another fret, or the hand in another position.</param>
internal readonly record struct StringUse(
    double String,
    bool Slurs,
    double Finger,
    bool Rolls,
    double Leaves
);

/// <summary>Looks through the notes from the last to the first and keeps what each string and finger does next.</summary>
internal sealed class StringUses
{
    private const double Never = double.PositiveInfinity;
    private const int Fingers = 5;
    private const int Strings = 9;

    private readonly (double At, bool Slurs)[] _strings = new (double, bool)[Strings];
    private readonly (double At, int Fret, uint On, double Leaves)[] _fingers = new (
        double,
        int,
        uint,
        double
    )[Fingers];
    private (double At, int Fret, double Leaves) _hand = (Never, -1, Never);

    private StringUses()
    {
        Array.Fill(_strings, (Never, false));
        Array.Fill(_fingers, (Never, -1, 0u, Never));
    }

    /// <summary>One for each tone of each note, in their order.</summary>
    public static ImmutableArray<ImmutableArray<StringUse>> Of(ImmutableArray<UnrolledNote> notes)
    {
        var walk = new StringUses();
        var uses = new ImmutableArray<StringUse>[notes.Length];
        for (var i = notes.Length - 1; i >= 0; i--)
        {
            var played = notes[i].Played;
            uses[i] = [.. played.Tones.Select(tone => walk.After(tone, played.Position))];
            walk.Pass(notes[i]);
        }

        return [.. uses];
    }

    private StringUse After(PlayedTone tone, int position)
    {
        var (at, slurs) = _strings[tone.Place.String];
        if (tone.Finger == 0)
        {
            return new StringUse(at, slurs, Never, false, Never);
        }

        var next = _fingers[tone.Finger];
        var stays = next.Fret == tone.Place.Fret && (next.On & Bit(tone.Place.String)) != 0;
        var beside = Bit(tone.Place.String - 1) | Bit(tone.Place.String + 1);
        var rolls = next.Fret == tone.Place.Fret && (next.On & beside) != 0;
        var finger = next.Fret == tone.Place.Fret ? next.Leaves : next.At;
        var hand = _hand.Fret == position ? _hand.Leaves : _hand.At;
        return new StringUse(at, slurs, stays ? Never : next.At, rolls, Math.Min(finger, hand));
    }

    private void Pass(UnrolledNote note)
    {
        foreach (var tone in note.Played.Tones)
        {
            _strings[tone.Place.String] = (note.OnsetSeconds, tone.Stroke == Stroke.None);
        }

        foreach (var finger in note.Played.Tones.Where(tone => tone.Finger > 0).GroupBy(tone => tone.Finger))
        {
            var fret = finger.First().Place.Fret;
            var next = _fingers[finger.Key];
            var on = finger.Aggregate(0u, (all, tone) => all | Bit(tone.Place.String));
            _fingers[finger.Key] = (note.OnsetSeconds, fret, on, next.Fret == fret ? next.Leaves : next.At);
        }

        if (note.Played.Tones.Any(tone => tone.Finger > 0))
        {
            var position = note.Played.Position;
            _hand = (note.OnsetSeconds, position, _hand.Fret == position ? _hand.Leaves : _hand.At);
        }
    }

    private static uint Bit(int stringNumber) => 1u << stringNumber;
}
