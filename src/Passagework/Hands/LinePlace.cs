using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Hands;

/// <summary>Says where in the music a note stands.</summary>
internal static class LinePlace
{
    /// <summary>Such as "bar 2, beat 3" or "bar 2, beat 3½"; bars and beats count from 1.</summary>
    public static string Of(Line line, int note) =>
        BarBeat.Of(line.Notes[note].Onset, line.Recipe.Rhythm.Meter).Words;
}
