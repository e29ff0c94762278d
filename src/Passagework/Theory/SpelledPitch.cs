using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>A named pitch with its octave, such as A2; octaves count from C, and C4 is middle C, MIDI 60.</summary>
/// <remarks>The default value is C0. Cb4 sounds as B3, B#3 as C4.</remarks>
public readonly record struct SpelledPitch(NoteName Name, int Octave)
{
    /// <summary>The MIDI key number that sounds (C4 = 60).</summary>
    public int Midi => (12 * (Octave + 1)) + Name.SemitonesAboveC;

    /// <summary>The pitch of that name that sounds as MIDI key <paramref name="midi"/>.</summary>
    /// <exception cref="ArgumentException">The key is not of that pitch class.</exception>
    public static SpelledPitch At(NoteName name, int midi)
    {
        var above = midi - name.SemitonesAboveC;
        if (above % 12 != 0)
        {
            throw new ArgumentException($"{name} is not the pitch class of key {midi}.", nameof(midi));
        }

        return new SpelledPitch(name, (above / 12) - 1);
    }

    /// <summary>Reads a note name and an octave, −1 to 9, such as <c>C#4</c>.</summary>
    public static bool TryParse(string? text, out SpelledPitch pitch)
    {
        pitch = default;
        var split = text?.AsSpan().IndexOfAnyInRange('0', '9') ?? -1;
        if (text is null || split < 1)
        {
            return false;
        }

        if (text[split - 1] == '-')
        {
            split--;
        }

        if (
            !NoteName.TryParse(text[..split], out var name)
            || !int.TryParse(
                text.AsSpan(split),
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var octave
            )
            || octave is < -1 or > 9
        )
        {
            return false;
        }

        pitch = new SpelledPitch(name, octave);
        return true;
    }

    /// <summary>The interval from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public static Interval operator -(SpelledPitch high, SpelledPitch low) =>
        new(high.LettersAboveC0 - low.LettersAboveC0, high.Midi - low.Midi);

    /// <summary>The pitch that lies the interval above.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Its name would need more than three signs.</exception>
    public static SpelledPitch operator +(SpelledPitch pitch, Interval interval)
    {
        var letters = pitch.LettersAboveC0 + interval.Letters;
        var octave = (letters - WholeNumbers.Modulo(letters, 7)) / 7;
        var natural = new SpelledPitch(NoteName.Of(letters - (7 * octave), 0), octave);
        var alteration = pitch.Midi + interval.Semitones - natural.Midi;
        return natural with { Name = NoteName.Of(natural.Name.Letter, alteration) };
    }

    /// <summary>The pitch that lies the interval below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Its name would need more than three signs.</exception>
    public static SpelledPitch operator -(SpelledPitch pitch, Interval interval) => pitch + -interval;

    private int LettersAboveC0 => (7 * Octave) + Name.Letter;

    /// <summary>Such as <c>A2</c> or <c>Eb4</c>.</summary>
    public override string ToString() => Name.ToString() + Octave.ToString(CultureInfo.InvariantCulture);
}
