using CsCheck;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>
/// One change of the plectrum, case by case. Tabled values computed for the project by an independent program
/// (scale 648 mm, default spacing, levels 0 to 4).
/// </summary>
public class PlectrumMovesTests
{
    private static readonly double SpacingMm = Geometry.Of(Fretboard.Standard).PickingSpacingMm;

    [Theory]
    [InlineData("5 D", "5 U", "220 160 120 84 68")]
    [InlineData("6 D", "5 U", "331 239 175 116 89")]
    [InlineData("5 U", "6 D", "331 239 175 116 89")]
    [InlineData("6 U", "5 D", "342 247 181 119 91")]
    [InlineData("5 D", "6 U", "342 247 181 119 91")]
    [InlineData("6 D", "4 U", "383 276 201 130 98")]
    [InlineData("6 U", "4 D", "399 288 209 135 101")]
    [InlineData("5 D", "5 D", "440 320 240 168 136")]
    [InlineData("6 D", "5 D", "150 110 80 58 45")]
    [InlineData("5 U", "6 U", "150 110 80 58 45")]
    public void Change_takes_the_tabled_time(string from, string to, string expected)
    {
        var demand = new PlectrumMoves(SpacingMm, Clear.Both).Between(StateOf(from), StateOf(to));

        var actual = Enumerable
            .Range(0, 5)
            .Select(level =>
                FormattableString.Invariant($"{demand.At(Player.At(level).Parameters.Basis):0}")
            );
        Assert.Equal(expected, string.Join(' ', actual));
    }

    // Travel in mm and strings hopped over, half-depth 2.5 mm, strings 10.07 mm apart (80 mm from the bridge).
    [Theory]
    [InlineData("5 D", "5 U", 0.0, 0)]
    [InlineData("5 D", "5 D", 5.0, 1)]
    [InlineData("6 D", "5 U", 10.07, 1)]
    [InlineData("6 U", "5 D", 10.07, 1)]
    [InlineData("6 D", "5 D", 5.07, 0)]
    [InlineData("5 D", "6 D", 15.07, 2)]
    [InlineData("6 D", "4 U", 20.14, 2)]
    [InlineData("6 D", "4 D", 15.14, 1)]
    [InlineData("6 D", "3 U", 30.20, 3)]
    public void Travel_and_hops_follow_the_geometry_of_a_stroke(
        string from,
        string to,
        double millimetres,
        int hops
    )
    {
        var travel = PlectrumTravel.Of(StateOf(from), StateOf(to), SpacingMm);

        Assert.Equal(millimetres, travel.Millimetres, 0.006);
        Assert.Equal(hops, travel.Hops);
    }

    [Fact]
    public void Sweep_over_a_skip_and_strokes_against_the_crossing_have_lines_of_their_own()
    {
        var moves = new PlectrumMoves(SpacingMm, Clear.Both);
        var basis = Player.At(2).Parameters.Basis;

        // H 120, b_R 35, target 5.034 mm: 120 + 35 × log2(15.14/5.034 + 1), 240 + 35 × log2(15.07/5.034 + 1)
        Assert.Equal(190.1, moves.Between(StateOf("6 D"), StateOf("4 D")).At(basis), 0.1);
        Assert.Equal(309.9, moves.Between(StateOf("5 D"), StateOf("6 D")).At(basis), 0.1);
    }

    [Fact]
    public void Blocked_change_costs_half_as_much_again_on_the_crossing()
    {
        var basis = Player.At(2).Parameters.Basis;
        var moves = new PlectrumMoves(SpacingMm, Clear.AfterUp);

        // Outside neighbour after a down-stroke: 120 + 35 × 1.585 × 1.5; after an up-stroke it is free.
        Assert.Equal(203.2, moves.Between(StateOf("6 D"), StateOf("5 U")).At(basis), 0.1);
        Assert.Equal(175.5, moves.Between(StateOf("5 U"), StateOf("6 D")).At(basis), 0.1);
    }

    [Theory]
    [InlineData("6 D", "5 U", 1, 175.5)]
    [InlineData("6 U", "5 D", 1, 181.0)]
    [InlineData("6 D", "5 D", 2, 295.5)]
    [InlineData("5 D", "5 U", 3, 360.0)]
    public void Grid_charges_every_silent_pass(string from, string to, int slots, double expected) =>
        Assert.Equal(
            expected,
            new PlectrumMoves(SpacingMm, Clear.Both)
                .OnGrid(StateOf(from), StateOf(to), slots)
                .At(Player.At(2).Parameters.Basis),
            0.06
        );

    [Fact]
    public void Mirrored_strings_with_exchanged_strokes_change_no_demand() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Bool, Gen.Bool)
            .Sample(
                (from, to, down, next) =>
                {
                    var moves = new PlectrumMoves(SpacingMm, Clear.Both);
                    var (one, two) = (State(from, down), State(to, next));
                    var (mirroredOne, mirroredTwo) = (State(7 - from, !down), State(7 - to, !next));

                    Assert.Equal(moves.Between(one, two), moves.Between(mirroredOne, mirroredTwo));
                    Assert.Equal(moves.OnGrid(one, two, 3), moves.OnGrid(mirroredOne, mirroredTwo, 3));
                }
            );

    private static StrokeState State(int stringNumber, bool down) =>
        new(down ? Stroke.Down : Stroke.Up, stringNumber, stringNumber);

    private static StrokeState StateOf(string text) =>
        new(text[2] == 'D' ? Stroke.Down : Stroke.Up, text[0] - '0', text[0] - '0');
}
