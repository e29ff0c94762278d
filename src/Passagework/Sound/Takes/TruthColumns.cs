using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Sound.Takes;

/// <summary>The columns of truth and score files.</summary>
internal static class TruthColumns
{
    public static ImmutableArray<CsvColumn<TruthNote>> Truth { get; } =
    [
        new("kind", row => TakeWords.Kinds.Of(row.Kind)),
        new("scoreIndex", row => row.ScoreIndex ?? -1),
        new("pass", row => row.Pass),
        new("plannedS", row => row.PlannedSeconds),
        new("attack01S", row => row.Sound?.Attack.Hundredth),
        new("attack10S", row => row.Sound?.Attack.Tenth),
        new("attack50S", row => row.Sound?.Attack.Half),
        new("midi", row => row.Sound?.Midi),
        new("expectedMidi", row => row.ExpectedMidi),
        new("string", row => row.String),
        new("fret", row => row.Fret),
        new("velocity", row => row.Sound?.Velocity),
        new("endS", row => row.Sound?.EndSeconds),
        new("ringS", row => row.Sound?.RingSeconds),
        new("deviationMs", row => row.DeviationMs),
        new("technique", row => TakeWords.Techniques.Of(row.Technique)),
        new("stroke", row => RecipeWords.Strokes.Of(row.Stroke)),
        new("group", row => row.InGroup?.Group),
        new("place", row => row.InGroup?.Place),
        new("crossing", row => row.Crossing),
        new("shifted", row => row.Shifted ? 1 : 0),
    ];

    public static ImmutableArray<CsvColumn<ScoreNote>> Score { get; } =
    [
        new("index", row => row.Index),
        new("beat", row => row.Beat),
        new("midi", row => row.Midi),
        new("string", row => row.String),
        new("fret", row => row.Fret),
        new("stroke", row => RecipeWords.Strokes.Of(row.Stroke)),
        new("group", row => row.InGroup?.Group),
        new("place", row => row.InGroup?.Place),
        new("crossing", row => row.Crossing),
    ];

    public static TruthNote TruthFrom(CsvRow row)
    {
        var index = Whole(row, "scoreIndex");
        return new TruthNote
        {
            Kind = row.Word("kind", TakeWords.Kinds),
            ScoreIndex = index < 0 ? null : index,
            Pass = Whole(row, "pass"),
            PlannedSeconds = Number(row, "plannedS"),
            DeviationMs = Number(row, "deviationMs"),
            Sound = row.Number("attack10S") is null ? null : SoundFrom(row),
            ExpectedMidi = row.Whole("expectedMidi"),
            String = Whole(row, "string"),
            Fret = Whole(row, "fret"),
            Technique = row.Word("technique", TakeWords.Techniques),
            Stroke = row.Word("stroke", RecipeWords.Strokes),
            InGroup = InGroup(row),
            Crossing = Whole(row, "crossing"),
            Shifted = Whole(row, "shifted") == 1,
        };
    }

    public static ScoreNote ScoreFrom(CsvRow row) =>
        new(
            Whole(row, "index"),
            Number(row, "beat"),
            Whole(row, "midi"),
            Whole(row, "string"),
            Whole(row, "fret"),
            row.Word("stroke", RecipeWords.Strokes),
            InGroup(row),
            Whole(row, "crossing")
        );

    private static TruthSound SoundFrom(CsvRow row) =>
        new(
            new AttackTimes(Number(row, "attack01S"), Number(row, "attack10S"), Number(row, "attack50S")),
            Whole(row, "midi"),
            Whole(row, "velocity"),
            Number(row, "endS"),
            Number(row, "ringS")
        );

    private static (int Group, int Place)? InGroup(CsvRow row) =>
        row.Whole("group") is { } group ? (group, Whole(row, "place")) : null;

    private static int Whole(CsvRow row, string name) => row.Required(name, row.Whole(name));

    private static double Number(CsvRow row, string name) => row.Required(name, row.Number(name));
}
