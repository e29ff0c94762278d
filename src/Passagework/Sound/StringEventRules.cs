namespace Passagework.Sound;

/// <summary>What a string event must keep to before it can be rendered.</summary>
internal static class StringEventRules
{
    private const double LowestKey = 21;
    private const double HighestKey = 100;
    private const double LastSecond = 1e6;

    /// <summary>Throws for an event outside what can be rendered.</summary>
    public static void Require(StringEvent note, int stringCount)
    {
        Require(
            note.String >= 1 && note.String <= stringCount,
            note.String,
            $"from 1 to {stringCount}",
            "String"
        );
        Require(note.Seconds is >= 0 and <= LastSecond, note.Seconds, "from 0 to 10^6", "Seconds");
        Require(!double.IsNaN(note.EndSeconds), note.EndSeconds, "a time", "EndSeconds");
        Require(note.Key is >= LowestKey and <= HighestKey, note.Key, "from 21 to 100", "Key");
        Require(note.Strength is >= 0 and <= 1, note.Strength, "from 0 to 1", "Strength");
        Require(note.Position is null or (> 0 and <= 0.5), note.Position, "within (0, 0.5]", "Position");
        Require(
            note.Release is null or { Seconds: > 0 and <= 60 },
            note.Release,
            "within (0, 60]",
            "Release"
        );
        Require(
            note.Vibrato is null or { Hz: > 0 and <= 20, Semitones: >= 0 and <= 4 },
            note.Vibrato,
            "up to 20 Hz and 4 semitones",
            "Vibrato"
        );
        RequireBend(note);
    }

    private static void RequireBend(StringEvent note)
    {
        var last = 0.0;
        foreach (var (seconds, semitones) in note.Bend)
        {
            var legal = seconds >= last && seconds <= LastSecond && semitones is >= -12 and <= 12;
            Require(legal, (seconds, semitones), "in order of time and within 12 semitones", "Bend");
            last = seconds;
        }
    }

    private static void Require<T>(bool holds, T value, string legal, string what)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(what, value, $"{what} of a string event must be {legal}.");
        }
    }
}
