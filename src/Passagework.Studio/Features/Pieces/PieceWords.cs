using System.Globalization;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Repertoire;
using Passagework.Rhythm;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Moves and bars of a piece in words.</summary>
internal static class PieceWords
{
    private static readonly TabWriting BarTab = new()
    {
        Width = TabWriting.LeastWidth,
        Counts = true,
        Groups = false,
    };

    /// <summary>One of the hardest moves.</summary>
    public static HardMove Of(int number, NotableMove notable, Piece piece)
    {
        var (move, notes) = (notable.Move, piece.Realization.Notes);
        return new HardMove(
            number,
            move.Note,
            move.Hand,
            move.At.Words,
            $"{move.From}, {Finger(notes[move.Note - 1])}, to {move.To}, {Finger(notes[move.Note])}",
            Time(notable, piece),
            TextTab.WriteBars(piece.Realization, FirstBar(move, piece), move.At.Bar, BarTab)
        );
    }

    /// <summary>Bars in words, such as <c>bars 1 to 4, 7</c>; empty for none.</summary>
    public static string Bars(IEnumerable<long> bars)
    {
        var stretches = new List<(long First, long Last)>();
        foreach (var bar in bars.Distinct().Order())
        {
            if (stretches.Count > 0 && stretches[^1].Last == bar - 1)
                stretches[^1] = (stretches[^1].First, bar);
            else
                stretches.Add((bar, bar));
        }

        var one = stretches is [var only] && only.First == only.Last;
        return stretches.Count == 0
            ? ""
            : $"{(one ? "bar" : "bars")} {string.Join(", ", stretches.Select(Stretch))}";
    }

    private static string Stretch((long First, long Last) bars) =>
        (bars.Last - bars.First) switch
        {
            0 => Text($"{bars.First}"),
            1 => Text($"{bars.First}, {bars.Last}"),
            _ => Text($"{bars.First} to {bars.Last}"),
        };

    private static string Time(NotableMove notable, Piece piece)
    {
        var (move, rhythm) = (notable.Move, piece.Line.Recipe.Rhythm);
        var hand = move.Hand switch
        {
            Limit.Fretting => "The fretting hand needs",
            Limit.Picking => "The picking hand needs",
            _ => "Both hands need, to meet,",
        };
        var there = rhythm.TempoBpm is { } bpm
            ? Text(
                $"; at {bpm:0.##} beats a minute there are {move.Pulses * 60_000 / (bpm * rhythm.NotesPerBeat):0}"
            )
            : "";
        var upTo =
            move.Load > 0 ? Text($" Time enough up to {60 / (move.Load * rhythm.NotesPerBeat):0}.") : "";
        var again = notable.Times > 1 ? Text($" {notable.Times} times in the piece.") : "";
        return Text($"{hand} {move.Milliseconds:0} ms{there}.{upTo}{again}");
    }

    // A move into the first beat begins in the bar before.
    private static long FirstBar(PieceMove move, Piece piece)
    {
        var before = piece.Realization.Notes[move.Note - 1].Note;
        var bar = BarBeat.Of(before.Onset, piece.Line.Recipe.Rhythm.Meter).Bar;
        return Math.Max(bar, move.At.Bar - 1);
    }

    private static string Finger(PlayedNote note) =>
        note.Finger == 0 ? "open string" : $"{FingerNames.Of(note.Finger)} finger";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
