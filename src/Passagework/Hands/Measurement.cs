using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Hands;

/// <summary>What an exercise asks of each hand of one player, and how it sits against the beat.</summary>
public sealed record Measurement
{
    internal Measurement(PlannedLine planned) => Planned = planned;

    /// <summary>For whom.</summary>
    public required Player Player { get; init; }

    /// <summary>What is played.</summary>
    public required Realization Realization { get; init; }

    /// <summary>What the move that leads to each note asks; the first note has none.</summary>
    public required ImmutableArray<MoveDemand> Demands { get; init; }

    /// <summary>The picking hand, counted.</summary>
    public required PickingCounts Picking { get; init; }

    /// <summary>The fretting hand, counted.</summary>
    public required FrettingCounts Fretting { get; init; }

    /// <summary>The fastest tempo, with its range.</summary>
    public required Ceiling Ceiling { get; init; }

    /// <summary>How evenly the hands are loaded, 0 to 1; null when neither is asked anything.</summary>
    public required double? Balance { get; init; }

    /// <summary>Effective fingers of the plain scale in the same layout, against which the fingers are judged.</summary>
    public required double ScaleFingers { get; init; }

    /// <summary>The least ceiling over that of the plain scale in the same layout; null for a written line.</summary>
    public required double? RatioToScale { get; init; }

    /// <summary>How the groups sit against the beat; null where no groups are given.</summary>
    public required GroupFit? Fit { get; init; }

    /// <summary>Both hands as they were planned.</summary>
    internal PlannedLine Planned { get; }

    /// <summary>Balance of the hands times evenness over the fingers, 0 to 1; null with the balance.</summary>
    public double? EvenLoad => Balance * Evenness;

    /// <summary>How evenly the fingers share the notes beside the plain scale in the same layout; 1 where no less.</summary>
    public double Evenness => Math.Min(1, Fretting.EffectiveFingers / ScaleFingers);

    /// <summary>The ceiling in felt beats a minute, without the duration factor; null when no hand is asked anything.</summary>
    public double? Bpm => Top?.Bpm;

    /// <summary>The same with the span that it most likely lies in.</summary>
    public TopTempo? Top => TopTempo.Of(Ceiling, Realization.Line.Recipe.Rhythm.NotesPerBeat);

    /// <summary>
    /// Felt beats a minute to show and hear it at first: the recipe's, else relaxed for the player in whole beats, a
    /// walking pace where nothing limits the tempo.
    /// </summary>
    public double StartBpm =>
        Realization.Line.Recipe.Rhythm.TempoBpm
        ?? Math.Clamp(Math.Round(Ceiling.RelaxedShare * Bpm ?? WalkingBpm), SlowestStartBpm, FastestStartBpm);

    private const double WalkingBpm = 60;
    private const double SlowestStartBpm = 20;
    private const double FastestStartBpm = 400;
}

/// <summary>Demands of the move that leads to a note, in ms; null for a first note.</summary>
/// <param name="FrettingMs">Least time of the fretting hand.</param>
/// <param name="PickingMs">Least time of the picking hand; 0 for a slurred note.</param>
/// <param name="TogetherMs">Least time for the hands to meet nine times in ten; 0 where no finger has to meet a stroke.</param>
public readonly record struct MoveDemand(double? FrettingMs, double? PickingMs, double? TogetherMs)
{
    /// <summary>Whether at least half of the fretting hand's time rests on values that nobody has published.</summary>
    public bool FrettingIsAssumed { get; init; }

    /// <summary>Whether at least half of the picking hand's time rests on values that nobody has published.</summary>
    public bool PickingIsAssumed { get; init; }
}
