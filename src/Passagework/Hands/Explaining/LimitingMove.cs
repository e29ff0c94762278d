using Passagework.Exercises;

namespace Passagework.Hands.Explaining;

/// <summary>The move that sets the pace of a whole exercise.</summary>
/// <param name="Note">The note that it leads to, counted from 0.</param>
/// <param name="Limit">Whose move it is; that of the ceiling.</param>
/// <param name="Sentence">Where it is and what it is.</param>
public sealed record LimitingMove(int Note, Limit Limit, string Sentence)
{
    /// <summary>The hardest move in the stretch of the line that limits; null where no hand is asked anything.</summary>
    public static LimitingMove? Of(Measurement measured)
    {
        if (measured.Ceiling.LimitedBy is not { } limit)
        {
            return null;
        }

        var demands = measured.Planned.Demands;
        var basis = measured.Player.Parameters.Basis;
        var returns =
            limit == Limit.Fretting && LoadOf(demands.Carried, basis) > LoadOf(demands.Fretting, basis);
        var list = limit switch
        {
            Limit.Fretting => returns ? demands.Carried : demands.Fretting,
            Limit.Picking => demands.Picking,
            _ => demands.Together,
        };
        var note =
            1
            + WindowedLoad.Hardest(
                list.Loads(basis),
                HandConstants.WindowMoves,
                HandConstants.WindowTolerance
            );
        var place = LinePlace.Of(measured.Realization.Line, note);
        return new LimitingMove(
            note,
            limit,
            $"{Who(limit)} the pace, most of all in {place}: {What(measured, note, limit, returns)}."
        );
    }

    private static double LoadOf(LoadList list, double[] basis) =>
        list.AsksNothing
            ? 0
            : WindowedLoad.Of(list.Loads(basis), HandConstants.WindowMoves, HandConstants.WindowTolerance);

    private static string Who(Limit limit) =>
        limit switch
        {
            Limit.Fretting => "The fretting hand sets",
            Limit.Picking => "The picking hand sets",
            _ => "The meeting of both hands sets",
        };

    private static string What(Measurement measured, int note, Limit limit, bool returns)
    {
        var notes = measured.Realization.Notes;
        var move = PlaceWords.Move(notes[note - 1], notes[note]);
        if (limit == Limit.Picking)
        {
            var words = new PickingWords(measured).Of(note);
            return $"{move}, {char.ToLowerInvariant(words[0])}{words[1..]}";
        }

        return returns ? Return(notes, note) : move + FrettingWords.Of(notes[note - 1], notes[note]);
    }

    // Of a chord's fingers the one that comes back from furthest is not told apart: its highest tone speaks for it.
    private static string Return(System.Collections.Immutable.ImmutableArray<PlayedNote> notes, int note)
    {
        var finger = notes[note].Finger;
        var last = note - 2;
        while (last >= 0 && notes[last].Finger != finger)
        {
            last--;
        }

        var from = last < 0 ? "" : $" from {PlaceWords.Of(notes[last])}";
        return $"the {FrettingWords.Finger(finger)} comes back{from} to {PlaceWords.Of(notes[note])} while others play";
    }
}
