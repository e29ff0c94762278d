using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>The text files that lie beside a take's sound; their columns and fields stand in <c>docs/sound.md</c>.</summary>
/// <param name="Truth">Comma-separated, one row for each note of the take.</param>
/// <param name="Score">Comma-separated, one row for each note of the score.</param>
/// <param name="Plan">The idea as JSON, with what it came to.</param>
public sealed record TruthFiles(string Truth, string Score, string Plan)
{
    /// <summary>The files of a take; the same take gives the same bytes in any culture.</summary>
    public static TruthFiles Of(TakeIdea idea, Take take)
    {
        var page = TakeIdeaJson.Of(idea);
        page["made"] = new JsonObject
        {
            ["sampleRate"] = take.SampleRate,
            ["samples"] = take.Samples.Length,
            ["activeDbfs"] = Math.Round(take.Level.ActiveDbfs, 2),
            ["clippedShare"] = Math.Round(take.Level.ClippedShare, 6),
        };
        return new TruthFiles(
            CsvTable.Write(TruthColumns.Truth, take.Truth),
            CsvTable.Write(TruthColumns.Score, take.Score),
            JsonPage.Print(page)
        );
    }

    /// <summary>The notes of a truth file; a fault names the line.</summary>
    public static Outcome<ImmutableArray<TruthNote>> ReadTruth(string text) =>
        CsvTable.Read(text, TruthColumns.Truth, TruthColumns.TruthFrom);

    /// <summary>The notes of a score file; a fault names the line.</summary>
    public static Outcome<ImmutableArray<ScoreNote>> ReadScore(string text) =>
        CsvTable.Read(text, TruthColumns.Score, TruthColumns.ScoreFrom);
}
