using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;
using Passagework.Tests.Choosing.Measures;
using Passagework.Tests.Hands;

namespace Passagework.Tests.Repertoire;

public class PreparationTests
{
    // The first four moves are those of box 1, the last leaves it.
    private const string Tune = "6:5 6:8 5:5 5:7 4:5 1:12";

    [Fact]
    public void Exercises_are_listed_by_what_they_hold()
    {
        var prepared = Of(
            Tune,
            ("other", "2:5 2:6 2:5"),
            ("trill", "6:5 6:8 6:5 6:8"),
            ("again", Lines.BoxUp),
            ("scale", Lines.BoxUp)
        );

        Assert.Equal(["again", "scale", "trill", "other"], prepared.Coverage.Select(held => held.Exercise));
        Assert.Equal([0.8, 0.8, 0.2, 0], prepared.Coverage.Select(held => held.Share ?? -1));
        Assert.Equal(["again"], prepared.Smallest.Exercises);
        Assert.Equal(0.8, prepared.Together);
    }

    [Fact]
    public void What_several_hold_together_is_counted_once() =>
        Assert.Equal(
            0.8,
            Of(Tune, ("one", "6:5 6:8 5:5"), ("two", "6:8 5:5 5:7 4:5"), ("three", Lines.BoxUp)).Together
        );

    [Fact]
    public void What_no_exercise_holds_is_named_with_its_place()
    {
        var uncovered = Of(Tune, ("scale", Lines.BoxUp)).Uncovered;

        Assert.Equal(
            ["4:5 to 1:12"],
            uncovered.Select(notable => $"{notable.Move.From} to {notable.Move.To}")
        );
        Assert.Equal("bar 1, beat 9/4", uncovered[0].Move.At.ToString());
        Assert.Equal(5, Of(Tune).Uncovered.Sum(notable => notable.Times));
    }

    [Fact]
    public void The_most_frequent_stand_first_and_then_the_hardest()
    {
        var piece = Piece("6:5 5:12 6:5 5:12 6:5 5:12 6:5 1:5 1:6");
        var kinds = piece.Classes.Classes;

        var most = NotableMoves.Most(piece, kinds);

        Assert.Equal(3, most[0].Times);
        Assert.Equal(most.Select(one => one.Times).OrderDescending(), most.Select(one => one.Times));
        Assert.Equal(["1:5", "1:6"], most.Where(one => one.Times == 1).Select(one => one.Move.To.ToString()));
        Assert.Empty(NotableMoves.Most(piece, []));
    }

    [Fact]
    public void Takes_on_one_exercise_count_together()
    {
        var takes = new[] { FirstStroke.Down, FirstStroke.Up }
            .Select(first => Lines.Of(Lines.BoxUp, Lines.With(Technique.Alternate, first)))
            .Select(line => Realizer.Realize(line, Music.Player).OrThrow())
            .ToList();
        var (down, both) = (new PreparingExercise("x", [takes[0]]), new PreparingExercise("x", [.. takes]));

        Assert.Equal(22, both.Moves.Total);
        Assert.True(both.Moves.Classes.Length > down.Moves.Classes.Length);
        // The same notes: found once.
        Assert.Equal(down.In(takes[0].Line), both.In(takes[0].Line));
        Assert.NotEmpty(down.In(takes[0].Line));
    }

    [Fact]
    public void Of_figures_on_one_note_the_longest_is_told()
    {
        Realization Take(string places) => Realizer.Realize(Lines.Of(places), Music.Player).OrThrow();
        var exercise = new PreparingExercise("x", [Take("6:5 6:8 5:5"), Take("6:5 6:8 5:5 5:7")]);

        var found = exercise.In(Lines.Of("6:5 6:8 5:5 5:7 4:5"));

        Assert.Equal([(0, 4)], found.Select(one => (one.Note, one.Notes)));
    }

    [Fact]
    public void Occurrences_name_their_exercise_in_the_order_given()
    {
        var prepared = Of("6:5 6:8 5:5 5:7 4:5", ("b", "6:5 6:8 5:5"), ("a", "6:5 6:8 5:5 5:7"));

        Assert.Equal(
            ["b 0", "a 0"],
            prepared.Occurrences.Select(each => $"{each.Exercise} {each.Found.Note}")
        );
    }

    [Fact]
    public void Rare_is_what_other_music_lacks_and_the_piece_itself_is_not_other_music()
    {
        var piece = Piece("6:5 6:8 5:5 5:7 4:5 4:7 3:5 3:7 1:12");
        var music = PieceCollection
            .Of(
                [("itself", piece.Line), ("box", Lines.Of("3:5 3:7 2:5 2:8 2:5 3:7 3:5 2:8"))],
                Music.Player,
                Technique.Alternate
            )
            .OrThrow();

        var prepared = Preparation.Of(piece, [], music, Stop);

        Assert.Equal(1, prepared.OtherPieces);
        Assert.Equal("1:12", prepared.Rarest[0].Notable.Move.To.ToString());
        Assert.Equal(0, prepared.Rarest[0].Elsewhere);
        Assert.Equal(
            prepared.Rarest.Select(rare => rare.Elsewhere).Order(),
            prepared.Rarest.Select(rare => rare.Elsewhere)
        );
    }

    [Fact]
    public void Piece_of_one_note_needs_nothing()
    {
        var prepared = Of("6:5", ("scale", Lines.BoxUp));

        Assert.Null(prepared.Together);
        Assert.Null(prepared.Coverage[0].Share);
        Assert.Empty(prepared.Smallest.Exercises);
        Assert.Empty(prepared.Hardest);
    }

    // A quarter of a second at one pulse a second is a quarter of a pulse a note: four sixteenths of a beat.
    [Fact]
    public void The_time_there_is_for_a_move_is_the_time_between_its_notes()
    {
        var piece = Piece("6:5 6:8 5:5");

        Assert.All(piece.Moves, move => Assert.Equal(1, move.Pulses, 1e-12));
        Assert.Equal(0, Piece("6:0 6:0").Moves.Min(move => move.Hand == Limit.Fretting ? move.Pulses : 0));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Preparation Of(string piece, params (string Name, string Places)[] exercises) =>
        Preparation.Of(
            Piece(piece),
            [
                .. exercises.Select(exercise => new PreparingExercise(
                    exercise.Name,
                    [Realizer.Realize(Lines.Of(exercise.Places), Music.Player).OrThrow()]
                )),
            ],
            Music.Of(Lines.BoxUp),
            Stop
        );

    private static Piece Piece(string places) =>
        Passagework.Repertoire.Piece.Of("x", Lines.Of(places), Music.Player).OrThrow();
}
