using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>The tempo of a strip where none is asked for.</summary>
internal static class StripTempo
{
    // Where nothing limits the tempo, a walking pace.
    private const double PlainBpm = 60;

    /// <summary>In felt beats a minute: the one asked for, else the recipe's, else a relaxed one for the player.</summary>
    public static double Of(Measurement measured, double? asked)
    {
        var tempo = asked ?? measured.Realization.Line.Recipe.Rhythm.TempoBpm;
        var relaxed = measured.Bpm is { } ceiling ? Math.Round(Ceiling.RelaxedShare * ceiling) : PlainBpm;
        return tempo ?? Math.Clamp(relaxed, 20, 400);
    }
}
