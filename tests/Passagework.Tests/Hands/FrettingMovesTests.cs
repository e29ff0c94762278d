using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>
/// The cost of one move, case by case. Values of the first table were computed for the project by an independent
/// program (scale 648 mm, default spacing, levels 0 to 4, whole ms); the others are worked in the comments.
/// </summary>
public class FrettingMovesTests
{
    private static readonly Geometry Guitar = Geometry.Of(Fretboard.Standard);
    private static readonly FrettingMoves Moves = new(Guitar, handSize: 1);

    [Theory]
    [InlineData("5:5 1 5", "5:7 3 5", "300 215 151 99 71")]
    [InlineData("6:5 1 5", "6:8 4 5", "325 229 159 103 73")]
    [InlineData("5:7 3 5", "5:5 1 5", "264 191 134 92 65")]
    [InlineData("6:8 4 5", "5:5 1 5", "325 238 171 115 81")]
    [InlineData("5:7 3 5", "4:5 1 5", "325 238 171 115 81")]
    [InlineData("4:5 1 5", "6:8 4 5", "459 324 225 145 98")]
    [InlineData("5:5 1 5", "4:5 1 5", "410 300 215 145 105")]
    [InlineData("5:7 3 5", "4:7 3 5", "492 348 241 157 110")]
    [InlineData("1:8 4 5", "2:8 4 5", "533 372 254 162 113")]
    [InlineData("3:5 1 5", "5:5 1 5", "550 412 304 221 174")]
    public void Move_takes_the_tabled_time(string from, string to, string expected) =>
        Assert.Equal(expected, AtLevels(StateOf(from), StateOf(to), Reach.Struck));

    [Fact]
    public void Shift_alone_takes_the_tabled_time()
    {
        // The same finger on the same place, the hand one fret higher: nothing but the shift (and no dev factor on 0).
        var from = new FretState(Lines.PlaceOf("5:7"), 3, 5);
        var to = new FretState(Lines.PlaceOf("5:7"), 3, 6);

        Assert.Equal("195 135 88 52 30", AtLevels(from, to, Reach.Struck));
    }

    // At level 2: A 135, Λ 120, C 240, R 215, b_L 42, a_sh 62.5, b_sh 40, ω 0.30, φ 1 1.05 1.12 1.18.
    // Strings are 7.877 mm apart at fret 5, 8.164 mm at fret 7, 7.696 mm at fret 4.
    [Theory]
    [InlineData("repeated note", "5:5 1 5", "5:5 1 5", Reach.Struck, 0)]
    [InlineData("lift to the open string: 120", "5:5 1 5", "5:0 0 5", Reach.Struck, 120)]
    [InlineData("pull-off to the open string: 120 x 1.1", "5:5 1 5", "5:0 0 5", Reach.Slurred, 132)]
    [InlineData("open string elsewhere", "5:5 1 5", "4:0 0 5", Reach.Struck, 0)]
    [InlineData("from an open string: 135 x 1.12", "4:0 0 5", "4:7 3 5", Reach.Struck, 151.2)]
    [InlineData("hammer-on: 135 x 1.12", "5:5 1 5", "5:7 3 5", Reach.Slurred, 151.2)]
    [InlineData(
        "finger replaced: 135 x 1.05, reached back by a fret x 1.25",
        "5:5 1 5",
        "5:5 2 5",
        Reach.Struck,
        177.19
    )]
    [InlineData("pull-off: 120 x 1.12 x 1.1", "5:7 3 5", "5:5 1 5", Reach.Slurred, 147.84)]
    [InlineData(
        "same finger along the string: 240 x 1, reached back x 1.25",
        "5:5 1 5",
        "5:4 1 5",
        Reach.Struck,
        300
    )]
    internal void Case_is_worked(string rule, string from, string to, Reach reach, double expected) =>
        Assert.Equal((rule, expected), (rule, Math.Round(At(2, StateOf(from), StateOf(to), reach), 2)));

    [Fact]
    public void Press_on_another_string_adds_the_crossing()
    {
        // 135 × 1 × 0.95 (inward) + 0.7 × 42 × log2(7.877/4.5 + 1)
        var expected = (135 * 0.95) + (0.7 * 42 * Math.Log2((7.877 / 4.5) + 1));

        Assert.Equal(expected, At(2, StateOf("5:7 3 5"), StateOf("4:5 1 5"), Reach.Struck), 0.01);
    }

    [Fact]
    public void Crowded_fingertips_stagger()
    {
        // 1 to 2 on one fret of neighbouring strings, second finger reached back: (135 × 1.05 + crossing) × 1.3 × 1.25
        var crossing = 0.7 * 42 * Math.Log2((7.877 / 4.5) + 1);
        var expected = ((135 * 1.05) + crossing) * 1.3 * 1.25;

        Assert.Equal(expected, At(2, StateOf("5:5 1 5"), StateOf("4:5 2 5"), Reach.Struck), 0.02);
    }

    [Fact]
    public void Note_sounded_from_nowhere_is_hammered_harder()
    {
        var expected = (135 * 1.12 * 1.2) + (0.7 * 42 * Math.Log2((8.164 / 4.5) + 1));

        Assert.Equal(expected, At(2, StateOf("5:5 1 5"), StateOf("4:7 3 5"), Reach.Slurred), 0.02);
    }

    [Fact]
    public void Slide_takes_the_shift_alone_and_keeps_the_hand_together()
    {
        var shift = At(2, StateOf("5:5 1 5"), StateOf("5:7 1 7"), Reach.Slid);
        var shiftAndCycle = At(2, StateOf("5:5 1 5"), StateOf("5:7 1 7"), Reach.Struck);

        Assert.Equal(240, shiftAndCycle - shift, 1e-9);
        Assert.Equal(shift, At(2, StateOf("5:5 1 5"), StateOf("5:7 1 7"), Reach.SlurredOrSlid), 1e-9);
        Assert.Null(Moves.Between(StateOf("5:5 1 5"), StateOf("5:7 1 8"), Reach.Slid));
        Assert.Null(Moves.Between(StateOf("5:5 1 5"), StateOf("5:7 3 5"), Reach.Slid));
        Assert.Null(Moves.Between(StateOf("5:5 1 5"), StateOf("4:7 1 7"), Reach.Slid));
    }

    [Fact]
    public void Shift_after_an_open_string_costs_half()
    {
        var held = At(2, StateOf("4:5 1 5"), StateOf("4:7 2 6"), Reach.Struck);
        var still = At(2, StateOf("4:0 0 6"), StateOf("4:7 2 6"), Reach.Struck);
        var shifted = At(2, StateOf("4:0 0 5"), StateOf("4:7 2 6"), Reach.Struck);

        // 0.7 × (62.5 + 40 × log2(25.71/12.86 + 1)) = 88.1, the shift 5→6 of the table
        Assert.Equal(88.1, held - (135 * 1.05), 0.1);
        Assert.Equal(44.1, shifted - still, 0.1);
    }

    [Fact]
    public void Open_string_leaves_the_hand_where_it_is() =>
        Assert.Null(Moves.Between(StateOf("4:5 1 5"), StateOf("4:0 0 6"), Reach.Struck));

    [Fact]
    public void Higher_finger_on_a_lower_fret_is_impossible_in_one_position() =>
        Assert.Null(Moves.Between(StateOf("5:6 1 6"), StateOf("5:5 2 6"), Reach.Struck));

    [Fact]
    public void Span_beyond_the_largest_is_impossible()
    {
        // Third finger three frets above the first at fret 1: least 73.7 mm within 75, for a small hand not.
        var (from, to) = (StateOf("5:1 1 1"), StateOf("5:4 3 1"));

        Assert.NotNull(Moves.Between(from, to, Reach.Struck));
        Assert.Null(new FrettingMoves(Guitar, handSize: 0.85).Between(from, to, Reach.Struck));
    }

    // Nominal and least spans in mm at 648, index finger at frets 1, 3, 5, 7, 9, 12 (equal temperament, worked for
    // the project).
    [Theory]
    [InlineData(3, "99.0/73.7 88.2/66.4 78.6/60.0 70.0/54.2 62.4/49.0 52.5/42.3")]
    [InlineData(4, "128.4/104.3 114.4/93.7 101.9/84.2 90.8/75.8 80.9/68.3 68.0/58.5")]
    public void Spans_are_the_tabled_ones(int above, string expected)
    {
        var span = new HandSpan(Guitar, 1);
        int[] frets = [1, 3, 5, 7, 9, 12];

        var actual = frets.Select(fret =>
        {
            var (near, far) = (Place.At(5, fret), Place.At(5, fret + above));
            return FormattableString.Invariant(
                $"{span.NominalMm(near, far):0.0}/{span.LeastMm(near, far):0.0}"
            );
        });

        Assert.Equal(expected, string.Join(' ', actual));
    }

    [Fact]
    public void Spans_shrink_with_the_scale_length()
    {
        var shorter = new HandSpan(Geometry.Of(new Fretboard { ScaleLengthsMm = [628] }), 1);
        var (near, far) = (Place.At(5, 5), Place.At(5, 8));

        Assert.Equal(
            0.969,
            shorter.NominalMm(near, far) / new HandSpan(Guitar, 1).NominalMm(near, far),
            0.0005
        );
    }

    [Theory]
    [InlineData(5, 5, 0.546)]
    [InlineData(1, 4, 0.445)]
    [InlineData(4, 4, 0.0)]
    [InlineData(12, 5, 0.0)]
    [InlineData(1, 5, 1.0)]
    public void Stretch_is_the_worked_one(int fret, int hand, double expected)
    {
        // 1 + 0.5 u²; a hand of five frets is finger 1 to finger 4 over four frets.
        var near = new FretState(Place.At(5, fret), 1, fret);
        var far = new FretState(Place.At(5, fret + hand - 1), 4, fret);

        var factor = new HandSpan(Guitar, 1).StretchFactor(near, far) ?? double.NaN;

        Assert.Equal(expected, Math.Sqrt((factor - 1) / 0.5), 0.0006);
    }

    private static string AtLevels(FretState from, FretState to, Reach reach) =>
        string.Join(
            ' ',
            Enumerable
                .Range(0, 5)
                .Select(level => FormattableString.Invariant($"{At(level, from, to, reach):0}"))
        );

    private static double At(int level, FretState from, FretState to, Reach reach) =>
        Moves.Between(from, to, reach)?.At(Player.At(level).Parameters.Basis) ?? double.NaN;

    /// <summary>Place, finger and position.</summary>
    private static FretState StateOf(string text)
    {
        var parts = text.Split(' ');
        return new FretState(
            Lines.PlaceOf(parts[0]),
            int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture),
            int.Parse(parts[2], System.Globalization.CultureInfo.InvariantCulture)
        );
    }
}
