using CsCheck;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;
using Passagework.Tests.Hands;
using Passagework.Tests.Repertoire;

namespace Passagework.Tests.Choosing.Measures;

public class UseInMusicTests
{
    private const string Steps = "60 62 64";
    private const string Leap = "60 65*3 67";
    private const string Apart = " r r ";

    // 40 solos: 18 of even steps, 6 of a slow leap, 16 of something else. Five tenths of the exercise are steps, three leaps, two
    // something that no solo has.
    private static readonly PieceCollection Worked = Music
        .Try(
            Enumerable
                .Repeat(Steps, 18)
                .Concat(Enumerable.Repeat(Leap, 6))
                .Concat(Enumerable.Repeat("60*3 61 60", 16))
                .Select(text => Tunes.Of(text))
        )
        .OrThrow();

    private static readonly Line WorkedLine = Tunes.Of(
        string.Join(
            Apart,
            Enumerable
                .Repeat("70 76 71", 2)
                .Concat(Enumerable.Repeat(Steps, 5))
                .Concat(Enumerable.Repeat(Leap, 3))
        )
    );

    // Wilson's lower bounds of 18 and 6 of 40 at 90 %: 0.3279 and 0.0796.
    [Fact]
    public void Worked_counts_give_the_worked_values()
    {
        var use = UseInMusic.Of(WorkedLine, Worked);

        Assert.Equal(0.27, use.Found, 1e-12);
        Assert.Equal(0.1878, use.Raw ?? -1, 0.00005);
        Assert.Equal((10, 8, 40), (use.Cells, use.CellsMet, use.Pieces));
        Assert.Equal(0.8, use.ShareMet);
    }

    [Fact]
    public void The_figure_most_at_home_is_named_with_its_pieces()
    {
        var most = UseInMusic.Of(WorkedLine, Worked).MostAtHome;

        Assert.Equal(("+2 +2", 6, 18), (most?.Shape.ToString(), most?.FirstNote, most?.Pieces));
        Assert.Null(UseInMusic.Of(Tunes.Of("70 76 71"), Worked).MostAtHome);
    }

    [Fact]
    public void Of_figures_in_as_many_pieces_the_longest_is_named()
    {
        var music = Music.Try([Tunes.Of("60 62 64 60 62 67 69"), Tunes.Of("72*2 71*2 70*3 69")]).OrThrow();

        var most = UseInMusic.Of(Tunes.Of("59 62 64 60 62 67"), music).MostAtHome;

        Assert.Equal(("+2 -4 +2 +5", 1, 1), (most?.Shape.ToString(), most?.FirstNote, most?.Pieces));
    }

    [Theory]
    [InlineData(Steps, Leap, "+2 +2")]
    [InlineData(Leap, Steps, "+5 >+2")]
    public void Of_equally_long_ones_the_first_is_named(string first, string second, string named)
    {
        string[] solos = [Steps, Leap, "60*3 61 60"];
        var music = Music.Try(solos.Select(text => Tunes.Of(text))).OrThrow();

        var most = UseInMusic.Of(Tunes.Of(first + Apart + second), music).MostAtHome;

        Assert.Equal((named, 0, 1), (most?.Shape.ToString(), most?.FirstNote, most?.Pieces));
    }

    // A run played over and over: with seven places for it, chance makes it nearly always.
    [Fact]
    public void Figures_that_chance_makes_do_not_count()
    {
        var music = Music.Try([Tunes.Of("60 62 64 60 62 64 60 62 64")]).OrThrow();

        var use = UseInMusic.Of(Tunes.Of("60 62 64"), music);

        Assert.Equal((0.0, 0), (use.Raw, use.CellsMet));
        Assert.Equal(1, music.Solos.Holding(Cells.In(Tunes.Of("60 62 64")).Classes[0]));
    }

    [Fact]
    public void Without_figures_or_music_there_is_no_value()
    {
        Assert.Null(UseInMusic.Of(Tunes.Of("60 62"), Worked).Raw);
        Assert.Null(UseInMusic.Of(WorkedLine, Music.Nothing).Raw);
        Assert.Empty(UseInMusic.Of(WorkedLine, Music.Nothing).Resampled);
        Assert.Equal(0, UseInMusic.Of(WorkedLine, Music.Nothing).Pieces);
    }

    [Fact]
    public void Resamples_equal_a_plain_count_in_the_pieces_written_out() =>
        Gen.Select(Tunes.Any, Tunes.Any.Array[1, 5])
            .Sample(
                (exercise, tunes) =>
                {
                    if (!Music.Try(tunes).TryGet(out var music, out _))
                    {
                        return;
                    }

                    var use = UseInMusic.Of(exercise, music);
                    for (var r = 0; r < PieceResamples.Count; r += 67)
                    {
                        Assert.Equal(
                            Counted(exercise, music, r),
                            use.Resampled.IsEmpty ? null : use.Resampled[r],
                            new Near()
                        );
                    }
                },
                iter: 40
            );

    [Fact]
    public void The_built_in_pieces_hold_common_figures()
    {
        var threes = UseInMusic.Of(Lines.Of(Lines.Groups(0, 1, 2)), Music.BuiltIn);

        Assert.InRange(threes.Raw ?? 0, 0.005, 0.1);
        Assert.True(threes.Found > threes.Raw);
        Assert.InRange(threes.MostAtHome?.Pieces ?? 0, 3, 23);
        Assert.Equal(200, threes.Resampled.Length);
    }

    private static double? Counted(Line exercise, PieceCollection music, int resample)
    {
        var lines = Music.LinesOf(music, resample).Select(line => Cells.In(line)).ToList();
        var cells = Cells.In(exercise);
        return cells.IsEmpty
            ? null
            : cells
                .Classes.Where(music.Solos.BeatsChance)
                .Sum(cell =>
                    cells.ShareOf(cell)
                    * Wilson.Of(lines.Count(line => line.CountOf(cell) > 0), lines.Count).Low
                );
    }

    private sealed class Near : IEqualityComparer<double?>
    {
        public bool Equals(double? x, double? y) =>
            (x is null) == (y is null) && Math.Abs((x - y) ?? 0) < 1e-12;

        public int GetHashCode(double? obj) => 0;
    }
}
