using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How groups lie in a feel, from worst to best fit.</summary>
public enum FeelGrade
{
    /// <summary>They do not meet the bar line within the bars asked for.</summary>
    Open,

    /// <summary>They meet it, having crossed the beat.</summary>
    Resolving,

    /// <summary>They start at the same places in every beat.</summary>
    Nested,

    /// <summary>Each starts on a beat.</summary>
    Locked,
}

/// <summary>A feel and how the groups lie in it.</summary>
public readonly record struct GradedFeel(Feel Feel, FeelGrade Grade)
{
    /// <summary>The grade of a pass of groups. The rules are chosen by us.</summary>
    /// <param name="starts">Group starts.</param>
    /// <param name="feel">The feel.</param>
    /// <param name="beatsPerBar">Felt beats in a bar.</param>
    /// <param name="bars">Bars within which the groups should meet the bar line again.</param>
    internal static GradedFeel Of(Pass starts, Feel feel, int beatsPerBar, int bars)
    {
        var perBeat = feel.NotesPerBeat;
        if (starts.Length / WholeNumbers.Gcd(starts.Length, perBeat * beatsPerBar) > bars)
        {
            return new GradedFeel(feel, FeelGrade.Open);
        }

        // Swung, an odd distance turns long notes into short ones: such accents never sit the same way twice.
        var sitsUnevenly = !feel.Swing.IsStraight && !AllMultiplesOf(starts, 2);
        var grade = sitsUnevenly ? FeelGrade.Resolving : Straight(starts, perBeat);
        return new GradedFeel(feel, grade);
    }

    private static FeelGrade Straight(Pass starts, int perBeat)
    {
        if (AllMultiplesOf(starts, perBeat))
        {
            return FeelGrade.Locked;
        }

        // Every beat is alike when the starts repeat after gcd(length, beat) pulses.
        var period = (int)WholeNumbers.Gcd(starts.Length, perBeat);
        var residues = starts.Marks.Select(mark => mark % period).Distinct().Count();
        return starts.Marks.Length == residues * (starts.Length / period)
            ? FeelGrade.Nested
            : FeelGrade.Resolving;
    }

    private static bool AllMultiplesOf(Pass starts, int number) =>
        starts.Length % number == 0 && starts.Marks.All(mark => mark % number == 0);
}
