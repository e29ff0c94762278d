using System.Collections.Immutable;

namespace Passagework.Choosing.Measures;

/// <summary>One thing that is wanted of an exercise.</summary>
/// <param name="Id">Its name in files.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Unit">What the raw figure is, for people.</param>
/// <param name="Basis">What the figure rests on, for the line of doubt.</param>
public sealed record Criterion(string Id, string Title, string Unit, string Basis)
{
    /// <summary>A criterion of the teacher's own, marked by hand.</summary>
    public static Criterion Own(string id) =>
        new(id, id.Replace('-', ' '), "mark from 0 to 1", "the teacher's own mark");
}

/// <summary>The criteria that every exercise is measured on.</summary>
public static class Criteria
{
    /// <summary>Neither hand rests while the other works, and no finger does it all.</summary>
    public static Criterion EvenLoad { get; } =
        new(
            "even-load",
            "even load",
            "time of the less busy hand over that of the busier one, times how evenly the fingers share the notes; 0 to 1",
            "modelled times of both hands (those of rolls, shifts and skips are assumed)"
        );

    /// <summary>It makes other things easier, not only itself.</summary>
    public static Criterion GeneralUse { get; } =
        new(
            "general-use",
            "general use",
            "harmonic mean of the share of its moves met in the pieces and the share of theirs it practises; 0 to 1",
            "the pieces at hand (that shared moves carry over has not been measured on guitarists)"
        );

    /// <summary>There is always another gear.</summary>
    public static Criterion StayingPower { get; } =
        new(
            "staying-power",
            "staying power",
            "share of the room for speed that is left at the last level; 0 to 1",
            "modelled top tempi of a beginner and an expert (times of rolls are assumed)"
        );

    /// <summary>Its figures are met in music.</summary>
    public static Criterion UseInMusic { get; } =
        new(
            "use-in-music",
            "use in music",
            "share of the pieces that hold its figures, at least, weighed by how often it plays them; 0 to 1",
            "the pieces at hand"
        );

    /// <summary>It does not announce one feel.</summary>
    public static Criterion RhythmicAmbiguity { get; } =
        new(
            "rhythmic-ambiguity",
            "rhythmic ambiguity",
            "share of the places of the beat that its accents visit, over four ways of dividing it; 0 to 1",
            "counting"
        );

    /// <summary>Its groups come out even within a phrase.</summary>
    public static Criterion ComesOutEven { get; } =
        new(
            "comes-out-even",
            "comes out even",
            "share of seven feels in which its groups come out within four bars; 0 to 1",
            "counting"
        );

    /// <summary>All six, in the order in which they are listed.</summary>
    public static ImmutableArray<Criterion> All { get; } =
    [EvenLoad, GeneralUse, StayingPower, UseInMusic, RhythmicAmbiguity, ComesOutEven];
}
