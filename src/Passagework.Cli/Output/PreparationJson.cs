using System.Text.Json.Nodes;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;

namespace Passagework.Cli.Output;

/// <summary>What prepares a piece, for machines.</summary>
internal static class PreparationJson
{
    public static string Of(PreparedPiece prepared)
    {
        var preparation = prepared.Preparation;
        var piece = preparation.Piece;
        var smallest = preparation.Smallest;
        return JsonPage.Print(
            new JsonObject
            {
                ["piece"] = piece.Name,
                ["player"] = prepared.Player.Name,
                ["technique"] = RecipeWords.Techniques.Of(piece.Line.Recipe.Picking.Technique),
                ["notes"] = piece.Line.Notes.Length,
                ["bars"] = prepared.Bars,
                ["tempo"] = prepared.TempoBpm,
                ["moves"] = piece.Moves.Length,
                ["kinds"] = piece.Classes.Classes.Length,
                ["leftOut"] = Array(prepared.Remarks, remark => JsonValue.Create(remark)),
                ["hardest"] = Array(preparation.Hardest, notable => Hard(prepared, notable)),
                ["coverage"] = Array(
                    preparation.Coverage,
                    held => new JsonObject
                    {
                        ["exercise"] = held.Exercise,
                        ["share"] = Rounded.Figure(held.Share),
                    }
                ),
                ["smallestSet"] = Array(smallest.Exercises, name => JsonValue.Create(name)),
                ["exact"] = smallest.IsSmallest,
                ["atMostTimesTheFewest"] = Rounded.Figure(smallest.Factor),
                ["together"] = Rounded.Figure(preparation.Together),
                ["kindsWanted"] = smallest.Wanted,
                ["uncovered"] = Array(preparation.Uncovered, Notable),
                ["rarest"] = Array(preparation.Rarest, Rare),
                ["otherPieces"] = preparation.OtherPieces,
                ["occurrences"] = Array(preparation.Occurrences, Occurrence),
                ["exercisesLeftOut"] = Array(
                    prepared.With.LeftOut,
                    gone => new JsonObject { ["exercise"] = gone.Name, ["why"] = gone.Why }
                ),
            }
        );
    }

    private static JsonObject Hard(PreparedPiece prepared, NotableMove notable)
    {
        var entry = Notable(notable);
        entry["ms"] = Rounded.Milliseconds(notable.Move.Milliseconds);
        entry["hand"] = Words.Of(notable.Move.Hand);
        entry["availableMs"] = Rounded.Milliseconds(prepared.MillisecondsFor(notable.Move));
        entry["inTimeUpToBpm"] = Rounded.Figure(prepared.InTimeUpTo(notable.Move));
        return entry;
    }

    private static JsonObject Rare(RareMove rare)
    {
        var entry = Notable(rare.Notable);
        entry["elsewhere"] = rare.Elsewhere;
        return entry;
    }

    private static JsonObject Notable(NotableMove notable)
    {
        var move = notable.Move;
        return new JsonObject
        {
            ["bar"] = move.At.Bar,
            ["beat"] = move.At.Beat.ToString(),
            ["from"] = move.From.ToString(),
            ["to"] = move.To.ToString(),
            ["fromFinger"] = move.Class.FromFinger,
            ["toFinger"] = move.Class.ToFinger,
            ["times"] = notable.Times,
        };
    }

    private static JsonObject Occurrence(ExerciseOccurrence occurrence) =>
        new()
        {
            ["exercise"] = occurrence.Exercise,
            ["bar"] = occurrence.Found.At.Bar,
            ["beat"] = occurrence.Found.At.Beat.ToString(),
            ["transposed"] = occurrence.Found.Transposed,
            ["notes"] = occurrence.Found.Notes,
        };

    private static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> entry) =>
        [.. items.Select(entry)];
}
