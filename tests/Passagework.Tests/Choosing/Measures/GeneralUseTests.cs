using CsCheck;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Tests.Hands;
using Passagework.Tests.Repertoire;

namespace Passagework.Tests.Choosing.Measures;

public class GeneralUseTests
{
    // One move a piece: four of one kind, three, two and one. The exercise has the first two in shares 0.5 and 0.3, and 0.2 of
    // something that the music lacks.
    private static readonly PieceCollection Worked = Music.Of([
        .. Enumerable.Repeat("6:5 6:7", 4),
        .. Enumerable.Repeat("6:7 6:5", 3),
        .. Enumerable.Repeat("6:5 6:5", 2),
        "6:5 6:6",
    ]);

    private static readonly Distribution<MoveClass> WorkedMoves = Distribution<MoveClass>.Of([
        .. Enumerable.Repeat(Worked.Pieces[0].Moves[0].Class, 5),
        .. Enumerable.Repeat(Worked.Pieces[4].Moves[0].Class, 3),
        .. Enumerable.Repeat(Tunes.Class('x'), 2),
    ]);

    private static readonly Gen<string> BoxLine = Gen.Int[0, 3]
        .Array[2, 9]
        .Select(places => string.Join(' ', places.Select(place => Lines.BoxUp.Split(' ')[place])));

    [Fact]
    public void Worked_shares_give_the_worked_mean()
    {
        var use = GeneralUse.Of(WorkedMoves, 1, Worked);

        Assert.Equal(0.8, use.Precision, 1e-12);
        Assert.Equal(0.7, use.Recall, 1e-12);
        Assert.Equal(0.7467, use.Raw ?? -1, 0.00005);
        Assert.Equal((10, 8, 10), (use.Moves, use.MovesMet, use.Pieces));
    }

    [Fact]
    public void What_comes_too_seldom_is_not_given()
    {
        Assert.Equal(0.4, GeneralUse.Of(WorkedMoves, 3.5, Worked).Recall, 1e-12);
        Assert.Equal(0.8, GeneralUse.Of(WorkedMoves, 3.5, Worked).Precision, 1e-12);
        Assert.Equal(0, GeneralUse.Of(WorkedMoves, 6, Worked).Raw);
    }

    // Ten a minute of 30 notes a pass at 0.6 of 5 notes a second: six passes a minute, so 1.67 a pass.
    [Fact]
    public void Often_enough_is_ten_times_a_minute()
    {
        Assert.Equal(10.0 / 6, GeneralUse.LeastCount(5, 30), 1e-12);
        Assert.Equal(0, GeneralUse.LeastCount(null, 30));
    }

    [Fact]
    public void Exercise_that_the_music_lacks_is_worth_nothing() =>
        Assert.Equal(0, GeneralUse.Of(Tunes.Counts("xyz"), 1, Worked).Raw);

    [Fact]
    public void Without_moves_or_music_there_is_no_value()
    {
        var none = GeneralUse.Of(Tunes.Counts(""), 1, Worked);
        var silent = GeneralUse.Of(WorkedMoves, 1, Music.Nothing);

        Assert.Equal((null, null), (none.Raw, silent.Raw));
        Assert.Empty(none.Resampled);
        Assert.Empty(silent.Resampled);
    }

    // Short pieces of four places, so that many kinds of moves are shared and some stand in one piece only.
    [Fact]
    public void Resamples_equal_the_pieces_written_out_again_and_again() =>
        Gen.Select(BoxLine, BoxLine.Array[1, 4], Gen.Int[0, 3])
            .Sample(
                (exercise, pieces, least) =>
                {
                    var music = Music.Of(pieces);
                    var moves = Piece.Of("x", Lines.Of(exercise), Music.Player).OrThrow().Classes;
                    var use = GeneralUse.Of(moves, least, music);
                    Assert.Equal(Coverage.Of(moves, music.Moves) ?? -1, use.Precision, 1e-12);
                    Assert.Equal(Coverage.Of(music.Moves, moves, least) ?? -1, use.Recall, 1e-12);
                    for (var r = 0; r < PieceResamples.Count; r += 41)
                    {
                        var again = GeneralUse.Of(moves, least, Music.Repeated(music, r));
                        Assert.Equal(again.Raw ?? -1, use.Resampled[r], 1e-12);
                    }
                },
                iter: 60
            );

    [Fact]
    public void Both_first_strokes_are_meant()
    {
        var takes = new[] { FirstStroke.Down, FirstStroke.Up }
            .Select(first => Lines.Of(Lines.BoxUp, Lines.With(Technique.Alternate, first)))
            .Select(line => Measurer.Measure(line, Music.Player).OrThrow())
            .ToList();
        var each = takes.ConvertAll(take => GeneralUse.Of(take, Music.BuiltIn));

        var both = GeneralUse.Of(takes, Music.BuiltIn);

        Assert.Equal((each[0].Raw + each[1].Raw) / 2, both.Raw);
        Assert.Equal((each[0].Resampled[7] + each[1].Resampled[7]) / 2, both.Resampled[7], 1e-12);
        Assert.Equal(each[0].MovesMet + each[1].MovesMet, both.MovesMet);
        Assert.Equal(22, both.Moves);
        Assert.NotEqual(each[0].Raw, each[1].Raw);
    }

    [Fact]
    public void Its_error_is_that_of_a_small_repertoire()
    {
        var use = GeneralUse.Of(
            Measurer.Measure(Lines.Of(Lines.BoxUpAndDown), Music.Player).OrThrow(),
            Music.BuiltIn
        );

        Assert.Equal(200, use.Resampled.Length);
        Assert.InRange(use.Resampled.Average(), (use.Raw ?? 0) - 0.05, (use.Raw ?? 0) + 0.05);
        Assert.InRange(use.Resampled.Max() - use.Resampled.Min(), 0.01, 0.3);
    }
}
