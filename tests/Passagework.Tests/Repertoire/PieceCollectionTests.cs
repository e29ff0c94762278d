using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Tests.Hands;

namespace Passagework.Tests.Repertoire;

public class PieceCollectionTests
{
    private static readonly Player Player = Player.At(2);

    private static readonly Line Impossible = Lines.Of(
        "6:5 6:8",
        new Recipe { Fretting = new FrettingPlan { Locks = [new(0, Finger: 4, Position: 12)] } }
    );

    [Fact]
    public void Everything_of_all_pieces_is_counted_together()
    {
        var music = Of(("one", Lines.Of("6:5 6:7 6:5")), ("two", Lines.Of("5:5 5:7"))).OrThrow();

        Assert.Equal(["one", "two"], music.Select(piece => piece.Name));
        Assert.Equal((2, 3, 2), (music.Count, music.Moves.Total, music.Solos.Count));
        Assert.Equal(2, music.Moves.CountOf(music.Pieces[1].Moves[0].Class));
        Assert.Empty(music.LeftOut);
    }

    [Fact]
    public void What_cannot_be_used_is_left_out_and_told()
    {
        var music = Of(("bad", Impossible), ("good", Lines.Of("5:5 5:7")), ("single", Lines.Of("5:5")))
            .OrThrow();

        Assert.Equal(["good"], music.Pieces.Select(piece => piece.Name));
        Assert.Equal(["bad", "single"], music.LeftOut.Select(piece => piece.Name));
        Assert.StartsWith(
            "bar 1, beat 1: the lock on note 0",
            music.LeftOut[0].Why,
            StringComparison.Ordinal
        );
        Assert.Equal("one note is no melody", music.LeftOut[1].Why);
    }

    [Fact]
    public void Nothing_that_can_be_used_is_a_fault_with_the_first_reason()
    {
        Assert.False(Of(("bad", Impossible), ("single", Lines.Of("5:5"))).TryGet(out _, out var fault));
        Assert.StartsWith(
            "bad: none of the pieces can be used (2 left out); ",
            fault.ToString(),
            StringComparison.Ordinal
        );
        Assert.False(Of().TryGet(out _, out var empty));
        Assert.Equal("there is no piece", empty.ToString());
    }

    [Fact]
    public void Pieces_are_stroked_by_the_technique_in_question_and_keep_slurs_and_fingers()
    {
        var written = new Recipe
        {
            Picking = new PickingPlan { Technique = Technique.Fingers, First = FirstStroke.Up },
            Fretting = new FrettingPlan
            {
                Locks = [new(0, Finger: 2), new(1, Stroke: Stroke.Thumb), new(3, Stroke: Stroke.Ring)],
            },
        };
        var line = Lines.Of("6:5 6:7 h6:8 6:7", written);

        var notes = Of(("a", line)).OrThrow().Pieces[0].Realization.Notes;

        Assert.Equal([Stroke.Down, Stroke.Up, Stroke.None, Stroke.Down], notes.Select(note => note.Stroke));
        Assert.Equal(2, notes[0].Finger);
        Assert.All(
            PieceCollection.Of([("a", line)], Player, Technique.AllUp).OrThrow().Pieces[0].Realization.Notes,
            note => Assert.True(note.Stroke is Stroke.Up or Stroke.None)
        );
    }

    [Fact]
    public void The_built_in_repertoire_is_played_whole_at_every_level()
    {
        for (var level = 0; level <= 4; level += 2)
        {
            var music = PieceCollection.BuiltIn(Player.At(level), Technique.Alternate).OrThrow();

            Assert.Equal((23, 0), (music.Count, music.LeftOut.Length));
            Assert.Equal("First Lamp", music.Pieces[0].Name);
        }
    }

    [Fact]
    public void The_built_in_repertoire_holds_none_of_the_library()
    {
        var music = PieceCollection.BuiltIn(Player, Technique.Alternate).OrThrow();

        foreach (var exercise in Library.All)
        {
            Assert.Same(music, music.Without(LineBuilder.Build(exercise.Recipe).OrThrow()));
        }
    }

    [Fact]
    public void A_piece_that_holds_the_exercise_itself_is_left_out_and_told()
    {
        var exercise = Lines.Of(Lines.Groups(0, 1, 2));
        var music = Of(("threes", exercise), ("other", Lines.Of("6:5 1:5 2:6 5:5"))).OrThrow();

        var without = music.Without(exercise);

        Assert.Equal(["other"], without.Pieces.Select(piece => piece.Name));
        Assert.Equal([new LeftOutPiece("threes", "it holds the exercise itself")], without.LeftOut);
        Assert.Equal((3, 1), (without.Moves.Total, without.Solos.Count));
        Assert.Same(without, without.Without(exercise));
        Assert.Empty(Of(("threes", exercise)).OrThrow().Without(exercise));
    }

    [Fact]
    public void What_was_left_out_for_one_exercise_stays_out_for_the_next()
    {
        var (threes, fours) = (Lines.Of(Lines.Groups(0, 1, 2)), Lines.Of(Lines.Groups(0, 1, 2, 3)));
        var music = Of(("threes", threes), ("other", Lines.Of("6:5 1:5 2:6 5:5")), ("fours", fours))
            .OrThrow();

        var without = music.Without(threes).Without(fours);

        Assert.Equal(["other"], without.Pieces.Select(piece => piece.Name));
        Assert.Equal(["threes", "fours"], without.LeftOut.Select(piece => piece.Name));
    }

    private static Outcome<PieceCollection> Of(params (string, Line)[] music) =>
        PieceCollection.Of(music, Player, Technique.Alternate);
}
