using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class PieceResamplesTests
{
    [Fact]
    public void Every_resample_has_as_many_pieces_as_there_are()
    {
        var all = PieceResamples.Of([true, true, true, true, true]);
        var some = PieceResamples.Of([true, false, true, true, false]);

        Assert.Equal((5, 3), (all.Pieces, some.Pieces));
        for (var r = 0; r < PieceResamples.Count; r++)
        {
            Assert.Equal(5, Enumerable.Range(0, 5).Sum(piece => all.Times(r, piece)));
            Assert.Equal(3, Enumerable.Range(0, 3).Sum(piece => some.Times(r, piece)));
        }
    }

    // 200 resamples of 20: each piece is drawn 200 times, give or take five standard deviations of 14.
    [Fact]
    public void Every_piece_has_the_same_chance()
    {
        var all = PieceResamples.Of(Enumerable.Repeat(true, 20).ToArray());

        for (var piece = 0; piece < 20; piece++)
        {
            Assert.InRange(Enumerable.Range(0, PieceResamples.Count).Sum(r => all.Times(r, piece)), 130, 270);
        }
    }

    [Fact]
    public void The_same_draws_come_again()
    {
        var (one, other) = (PieceResamples.Of([true, true, true]), PieceResamples.Of([true, true, true]));

        Assert.Equal(Draws(one), Draws(other));
        Assert.True(Draws(one).Distinct().Count() > 8);
    }

    // What is kept is drawn at least as often as with the piece that is gone: its draws stay and a few more take the free places.
    [Fact]
    public void Leaving_a_piece_out_keeps_the_draws_of_the_others()
    {
        var (all, some) = (
            PieceResamples.Of([true, true, true, true]),
            PieceResamples.Of([true, true, false, true])
        );

        for (var r = 0; r < PieceResamples.Count; r++)
        {
            Assert.Equal(Math.Min(3, 4 - all.Times(r, 2)), Kept(r));
        }

        int Kept(int r) =>
            Enumerable
                .Range(0, 3)
                .Sum(piece => Math.Min(some.Times(r, piece), all.Times(r, piece < 2 ? piece : 3)));
    }

    [Fact]
    public void Of_nothing_nothing_is_drawn() => Assert.Equal(0, PieceResamples.Of([false, false]).Pieces);

    private static List<string> Draws(PieceResamples resamples) =>
        [
            .. Enumerable
                .Range(0, PieceResamples.Count)
                .Select(r =>
                    string.Join(
                        ' ',
                        Enumerable.Range(0, resamples.Pieces).Select(piece => resamples.Times(r, piece))
                    )
                ),
        ];
}
