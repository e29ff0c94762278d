using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>Says where in the music a note stands.</summary>
internal static class LinePlace
{
    /// <summary>Such as "bar 2 beat 3" or "bar 2 beat 3+1/2"; bars and beats count from 1.</summary>
    public static string Of(Line line, int note)
    {
        var meter = line.Recipe.Rhythm.Meter;
        var onset = line.Notes[note].Onset;
        var bar = (onset / meter.Bar).Floor();
        var beats = onset.Modulo(meter.Bar) / meter.Beat;
        var rest = beats - Fraction.Of(beats.Floor());
        var after = rest == Fraction.Zero ? "" : "+" + rest;
        return System.FormattableString.Invariant($"bar {bar + 1} beat {beats.Floor() + 1}{after}");
    }
}
