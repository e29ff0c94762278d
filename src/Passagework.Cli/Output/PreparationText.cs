using System.Text;
using Passagework.Exercises;
using Passagework.Notation;
using Passagework.Repertoire;
using Passagework.Rhythm;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>What prepares a piece, for people.</summary>
internal static class PreparationText
{
    private const int CoverageRows = 12;
    private const int OccurrenceRows = 8;
    private const int Spots = 4;

    private static readonly TabWriting Bars = new() { Counts = true, Groups = false };

    public static string Of(PreparedPiece prepared)
    {
        var text = new StringBuilder();
        Head(text, prepared);
        if (prepared.Preparation.Piece.Moves.IsEmpty)
        {
            text.AppendLine().AppendLine("One note: there is no move in it that could be prepared.");
            return text.ToString();
        }

        Hardest(text, prepared);
        Coverage(text, prepared.Preparation);
        Uncovered(text, prepared.Preparation);
        Figures(text, prepared.Preparation);
        Rarest(text, prepared.Preparation);
        LeftOut(text, prepared);
        text.Append(
            """

            A move is a change of string and fret with its fingers and strokes; fingers and strokes that the piece does not
            tell are ours. Counts are certain, times are estimates. That a move practised in an exercise carries over to the
            piece is hoped, not measured.

            """
        );
        return text.ToString();
    }

    private static void Head(StringBuilder text, PreparedPiece prepared)
    {
        var piece = prepared.Preparation.Piece;
        var recipe = piece.Line.Recipe;
        var name = prepared.Source.Title == prepared.Source.Name ? "" : $" ({prepared.Source.Name})";
        var tempo = prepared.TempoBpm is { } bpm ? Text($"{bpm:0.##} beats a minute") : "no tempo is written";
        text.AppendLine($"{prepared.Source.Title}{name}, {prepared.Player.Name} player");
        text.AppendLine(
            Text(
                $"{Counted(piece.Line.Notes.Length, "note")} in {Counted(prepared.Bars, "bar")} of {recipe.Rhythm.Meter}, {tempo}; {Counted(piece.Moves.Length, "move")} of {Counted(piece.Classes.Classes.Length, "kind")}"
            )
        );
        text.AppendLine(
            $"technique {RecipeWords.Techniques.Of(recipe.Picking.Technique)}, for the piece and for all exercises alike"
        );
    }

    private static void Hardest(StringBuilder text, PreparedPiece prepared)
    {
        var tempo = prepared.TempoBpm is { } bpm ? Text($", time there is at {bpm:0.##}") : "";
        text.AppendLine().AppendLine($"Hardest moves: time needed{tempo}");
        var played = prepared.Preparation.Piece.Realization;
        foreach (var bar in prepared.Preparation.Hardest.GroupBy(notable => notable.Move.At.Bar))
        {
            var from = bar.Min(notable => BarBefore(played, notable.Move));
            foreach (var notable in bar)
            {
                text.AppendLine(Hard(prepared, notable));
            }

            text.AppendLine(TextTab.WriteBars(played, from, bar.Key, Bars));
        }
    }

    // A move into the first beat of a bar begins in the bar before; over a rest of bars only the end of it is shown.
    private static long BarBefore(Realization played, PieceMove move)
    {
        var before = played.Notes[move.Note - 1].Note;
        var bar = BarBeat.Of(before.Onset, played.Line.Recipe.Rhythm.Meter).Bar;
        return Math.Max(bar, move.At.Bar - 1);
    }

    private static string Hard(PreparedPiece prepared, NotableMove notable)
    {
        var move = notable.Move;
        var hand = move.Hand == Hands.Limit.Together ? "the hands' meeting" : $"{Words.Of(move.Hand)} hand";
        var there = prepared.MillisecondsFor(move) is { } ms ? Text($" of {ms:0}") : "";
        var bpm = prepared.InTimeUpTo(move) is { } upTo ? Text($", in time up to {upTo:0}") : "";
        return Text(
            $"  {Spot(notable, prepared.Preparation.Piece)}\n    {hand} {move.Milliseconds:0}{there} ms{bpm}{Again(notable)}"
        );
    }

    private static void Coverage(StringBuilder text, Preparation preparation)
    {
        var held = preparation.Coverage.Where(each => each.Share > 0).ToList();
        if (held.Count == 0)
        {
            text.AppendLine("None of the exercises holds a single move of this piece.");
            return;
        }

        text.AppendLine("What each exercise holds of it");
        foreach (var each in held.Take(CoverageRows))
        {
            text.AppendLine(Text($"  {each.Exercise, -28} {100 * each.Share, 3:0} of 100 moves"));
        }

        var rest = preparation.Coverage.Length - Math.Min(held.Count, CoverageRows);
        if (rest > 0)
        {
            text.AppendLine(Text($"  {Counted(rest, "other")} less or nothing"));
        }

        Smallest(text, preparation);
    }

    private static void Smallest(StringBuilder text, Preparation preparation)
    {
        var set = preparation.Smallest;
        text.AppendLine()
            .AppendLine(
                Text(
                    $"Fewest exercises that hold all they can of its {Counted(set.Wanted, "usual kind")} of moves (1 in 100 or more)"
                )
            );
        foreach (var name in set.Exercises)
        {
            text.AppendLine($"  {name}");
        }

        text.AppendLine(
            Text(
                $"  together {100 * preparation.Together:0} of 100 moves, {set.Wanted - set.Missing.Length} of {Counted(set.Wanted, "kind")}; {Proof(set)}"
            )
        );
    }

    private static string Proof(CoveringSet set) =>
        set.IsSmallest
            ? "no fewer will do"
            : Text($"not proved fewest: at most {set.Factor:0.0} times as many as needed");

    private static void Uncovered(StringBuilder text, Preparation preparation)
    {
        var none = preparation.Uncovered;
        if (none.IsEmpty)
        {
            return;
        }

        text.AppendLine()
            .AppendLine(Text($"{Counted(none.Length, "usual kind")} of moves that no exercise holds"));
        foreach (var notable in none.Take(Preparation.NamedMoves))
        {
            text.AppendLine($"  {Spot(notable, preparation.Piece)}{Again(notable)}");
        }

        if (none.Length > Preparation.NamedMoves)
        {
            text.AppendLine(Text($"  and {none.Length - Preparation.NamedMoves} more"));
        }
    }

    private static void Figures(StringBuilder text, Preparation preparation)
    {
        var byExercise = preparation
            .Occurrences.GroupBy(each => each.Exercise)
            .OrderByDescending(same => same.Count())
            .ToList();
        text.AppendLine();
        if (byExercise.Count == 0)
        {
            text.AppendLine("No figure of these exercises stands in it note for note.");
            return;
        }

        text.AppendLine("Figures of the exercises in it, in half steps from where the exercise has them");
        foreach (var same in byExercise.Take(OccurrenceRows))
        {
            var spots = same.Take(Spots)
                .Select(each => $"{each.Found.At.Words} ({Text($"{each.Found.Transposed:+0;-0;0}")})");
            var more = same.Count() > Spots ? Text($" and {same.Count() - Spots} more") : "";
            text.AppendLine($"  {same.Key}: {string.Join("; ", spots)}{more}");
        }

        if (byExercise.Count > OccurrenceRows)
        {
            text.AppendLine(
                Text($"  and those of {Counted(byExercise.Count - OccurrenceRows, "other exercise")}")
            );
        }
    }

    private static void Rarest(StringBuilder text, Preparation preparation)
    {
        text.AppendLine()
            .AppendLine(
                Text($"Rarest moves, looked for in {Counted(preparation.OtherPieces, "other piece")}")
            );
        foreach (var (notable, elsewhere) in preparation.Rarest)
        {
            var found = elsewhere == 0 ? "nowhere" : Times(elsewhere);
            text.AppendLine($"  {Spot(notable, preparation.Piece)}: {found}");
        }
    }

    private static void LeftOut(StringBuilder text, PreparedPiece prepared)
    {
        Lines(text, "In reading the piece", prepared.Remarks);
        Lines(
            text,
            "Exercises left out",
            [.. prepared.With.LeftOut.Select(gone => $"{gone.Name}: {gone.Why}")]
        );
    }

    private static void Lines(StringBuilder text, string title, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            text.AppendLine().AppendLine(title);
            foreach (var line in lines)
            {
                text.AppendLine($"  {line}");
            }
        }
    }

    private static string Spot(NotableMove notable, Piece piece)
    {
        var (move, notes) = (notable.Move, piece.Realization.Notes);
        var (from, to) = (notes[move.Note - 1], notes[move.Note]);
        return $"{move.At.Words}: {move.From} {Finger(from)} to {move.To} {Finger(to)}";
    }

    private static string Again(NotableMove notable) =>
        notable.Times == 1 ? "" : $"; {Times(notable.Times)} in the piece";

    private static string Times(int count) =>
        count switch
        {
            1 => "once",
            2 => "twice",
            _ => Text($"{count} times"),
        };

    private static string Counted(long number, string thing) =>
        Text($"{number} {thing}{(number == 1 ? "" : "s")}");
}
