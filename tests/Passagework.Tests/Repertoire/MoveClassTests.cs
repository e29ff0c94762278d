using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Tests.Hands;

namespace Passagework.Tests.Repertoire;

/// <summary>
/// Box 1 of A minor pentatonic at fret 5, strictly alternated from a down-stroke. Counts and likenesses are plain
/// arithmetic on strings, frets, fingers and strokes, worked by hand for the project.
/// </summary>
public class MoveClassTests
{
    // Up and down to the second note: 22 notes.
    private static readonly Distribution<MoveClass> Scale = Moves(Lines.BoxUpAndDown[..^4]);
    private static readonly Distribution<MoveClass> Threes = Moves(Lines.Groups(0, 1, 2));
    private static readonly Distribution<MoveClass> Fours = Moves(Lines.Groups(0, 1, 2, 3));
    private static readonly Distribution<MoveClass> Skips = Moves(Lines.Groups(0, 2));

    [Fact]
    public void Scale_threes_fours_and_skips_are_counted()
    {
        Assert.Equal((21, 8), Size(Scale));
        Assert.Equal((29, 8), Size(Threes));
        Assert.Equal((35, 12), Size(Fours));
        Assert.Equal((19, 9), Size(Skips));
    }

    [Theory]
    [InlineData(6, "(-1,-2,3>1,UD)")]
    [InlineData(4, "(-1,-3,4>1,UD)")]
    [InlineData(3, "(0,-2,3>1,UD)")]
    [InlineData(1, "(0,-3,4>1,UD)")]
    [InlineData(6, "(0,2,1>3,DU)")]
    [InlineData(4, "(0,3,1>4,DU)")]
    [InlineData(3, "(1,2,1>3,DU)")]
    [InlineData(2, "(1,3,1>4,DU)")]
    public void Threes_are_made_of_eight_kinds(int times, string kind) =>
        Assert.Equal(times, Threes.CountOf(Threes.Classes.Single(each => each.ToString() == kind)));

    [Fact]
    public void Threes_hold_no_move_that_the_scale_lacks()
    {
        Assert.Equal((0.940, 0.028, 1.000), Compared(Scale, Threes));
        Assert.Equal((0.487, 0.535, 0.429), Compared(Scale, Fours));
        Assert.Equal(0.524, Math.Round(Coverage.Of(Scale, Fours) ?? -1, 3));
        Assert.Equal((0.591, 0.474, 0.429), Compared(Threes, Fours));
        Assert.Equal((0.196, 0.780, 0.211), Compared(Scale, Skips));
        Assert.Equal((0.000, 1.000, 0.000), Compared(Fours, Skips));
    }

    [Fact]
    public void Another_first_stroke_is_another_exercise_for_the_picking_hand_alone()
    {
        var up = Moves(Lines.Groups(0, 1, 2), FirstStroke.Up);

        Assert.Equal(0, Likeness.Cosine(Threes, up));
        Assert.Equal(
            1,
            Likeness.Cosine(
                Threes.Merged(each => each.WithoutStrokes),
                up.Merged(each => each.WithoutStrokes)
            ) ?? -1,
            1e-12
        );
    }

    [Theory]
    [InlineData("(0,2,1>3,DH) (0,-2,3>1,HP)", "6:5 h6:7 p6:5")]
    [InlineData("(0,3,1>4,DU) (-1,-3,4>1,UD)", "6:5 6:8 5:5")]
    [InlineData("(1,0,0>0,DU)", "1:0 2:0")]
    public void Moves_of_a_short_line(string expected, string places) =>
        Assert.Equal(expected, string.Join(' ', MoveClass.In(Play(places, new Recipe()))));

    private static (long, int) Size(Distribution<MoveClass> moves) => (moves.Total, moves.Classes.Length);

    // Cosine, divergence, coverage of the second by the first.
    private static (double, double, double) Compared(Distribution<MoveClass> a, Distribution<MoveClass> b) =>
        (
            Math.Round(Likeness.Cosine(a, b) ?? -1, 3),
            Math.Round(Likeness.Divergence(a, b) ?? -1, 3),
            Math.Round(Coverage.Of(b, a) ?? -1, 3)
        );

    private static Distribution<MoveClass> Moves(string places, FirstStroke first = FirstStroke.Down) =>
        Distribution<MoveClass>.Of(MoveClass.In(Play(places, Lines.With(Technique.Alternate, first))));

    private static Realization Play(string places, Recipe recipe) =>
        Realizer.Realize(Lines.Of(places, recipe), Player.At(2)).OrThrow();
}
