using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Tests.Hands;

/// <summary>
/// What the picking hand does in well-known figures over box 1 of A minor pentatonic at fret 5. Counts are plain
/// arithmetic on strings and strokes, worked by hand for the project; they need no parameter.
/// </summary>
public class PickingFactsTests
{
    private static readonly string Threes = Lines.Groups(0, 1, 2);
    private static readonly string Fours = Lines.Groups(0, 1, 2, 3);
    private static readonly string Fives = Lines.Groups(0, 1, 2, 3, 4);
    private static readonly string Sixes = Lines.Groups(0, 1, 2, 3, 4, 5);
    private static readonly string Sevens = Lines.Groups(0, 1, 2, 3, 4, 5, 6);
    private const string BoxDown = "1:8 1:5 2:8 2:5 3:7 3:5 4:7 4:5 5:7 5:5 6:8 6:5";

    // same string, inside, outside, sweep steps, against, skips, reversals, after down, after up
    [Theory]
    [InlineData(Lines.BoxUp, FirstStroke.Down, "6 5 0 0 0 0 11 0 5")]
    [InlineData(Lines.BoxUp, FirstStroke.Up, "6 0 5 0 0 0 11 5 0")]
    [InlineData(BoxDown, FirstStroke.Down, "6 0 5 0 0 0 11 0 5")]
    [InlineData(Lines.BoxUpAndDown, FirstStroke.Down, "12 10 0 0 0 0 22 5 5")]
    public void Straight_box_is_counted(string places, FirstStroke first, string expected) =>
        Assert.Equal(expected, Counts(places, Technique.Alternate, first));

    [Theory]
    [InlineData("0 1 2", "14 15 0 0 0 0 29 5 10")]
    [InlineData("0 1 2 3", "14 5 16 0 0 0 35 21 0")]
    [InlineData("0 1 2 3 4", "16 20 3 0 0 4 39 4 19")]
    [InlineData("0 1 2 3 4 5", "18 8 15 0 0 6 41 23 0")]
    [InlineData("0 2", "4 0 15 0 0 0 19 15 0")]
    public void Sequences_up_are_counted_and_their_mirror_exchanges_the_sides(string cell, string expected)
    {
        var up = Lines.Groups(Offsets(cell));
        var parts = expected.Split(' ');

        var actual = Counts(up, Technique.Alternate).Split(' ');
        var mirrored = Counts(Lines.Mirror(up), Technique.Alternate).Split(' ');

        // Fours, sixes and pairs: the side of a change is counted whatever the stroke before it.
        Assert.Equal(parts[..7], actual[..7]);
        Assert.Equal(
            (parts[0], parts[2], parts[1], parts[5]),
            (mirrored[0], mirrored[1], mirrored[2], mirrored[5])
        );
    }

    [Fact]
    public void Threes_and_fives_change_mostly_after_up_strokes()
    {
        Assert.Equal((5, 10), After(Threes));
        Assert.Equal((4, 19), After(Fives));
    }

    [Theory]
    [InlineData("0 1 2", "DUDUDUDUDU")]
    [InlineData("0 1 2 3", "DDDDDDDDD")]
    [InlineData("0 1 2 3 4", "DUDUDUDU")]
    [InlineData("0 1 2 3 4 5", "DDDDDDD")]
    [InlineData("0 1 2 3 4 5 6", "DUDUDU")]
    [InlineData("0 2", "DDDDDDDDDD")]
    public void Groups_start_with_these_strokes(string cell, string expected) =>
        Assert.Equal(expected, Measured(Lines.Groups(Offsets(cell)), Technique.Alternate).GroupStarts);

    [Fact]
    public void Odd_groups_flip_their_start_and_even_ones_do_not()
    {
        Assert.Equal(7, Measured(Fives, Technique.Alternate).Flips);
        Assert.Equal(0, Measured(Fours, Technique.Alternate).Flips);
    }

    [Fact]
    public void Fives_skip_a_string_at_four_of_seven_joins_always_inside_after_a_down_stroke()
    {
        var counts = Measured(Fives, Technique.Alternate);

        Assert.Equal((4, 4, 0, 4), (counts.Skips, counts.InsideSkips, counts.OutsideSkips, counts.AfterDown));
        Assert.Equal("4:5>6:8 3:5>5:7 2:5>4:7 1:5>3:7", SkipsOf(Fives));
    }

    [Fact]
    public void Sixes_skip_a_string_outside_at_every_join()
    {
        var counts = Measured(Sixes, Technique.Alternate);

        Assert.Equal((6, 0, 6), (counts.Skips, counts.InsideSkips, counts.OutsideSkips));
    }

    [Fact]
    public void Sevens_join_over_two_strings_and_one_in_turn() => Assert.Equal("3 2 3 2 3", JoinsOf(Sevens));

    // Odd cells by single steps, and even ones, keep one stroke for each place; a step of the other parity does not.
    [Theory]
    [InlineData("0 1 2", true)]
    [InlineData("0 1 2 3 4", true)]
    [InlineData("0 1 2 3", false)]
    [InlineData("0 1 2 3 4 5", false)]
    public void Place_keeps_one_stroke_exactly_when_length_less_step_is_even(string cell, bool expected) =>
        Assert.Equal(
            expected,
            Measured(Lines.Groups(Offsets(cell)), Technique.Alternate).OneStrokeForEachPlace
        );

    [Theory]
    [InlineData(Lines.BoxUp, 6, 6)]
    [InlineData(Lines.BoxUpAndDown, 11, 12)]
    public void Legato_strikes_only_on_string_changes(string places, int strokes, int slurs)
    {
        var counts = Measured(places, Technique.Legato);

        Assert.Equal((strokes, slurs), (counts.Strokes, counts.Slurs));
    }

    [Theory]
    [InlineData("0 1 2", 16, 14)]
    [InlineData("0 1 2 3", 22, 14)]
    [InlineData("0 1 2 3 4", 24, 16)]
    [InlineData("0 1 2 3 4 5", 24, 18)]
    public void Legato_of_sequences_is_counted(string cell, int strokes, int slurs)
    {
        var counts = Measured(Lines.Groups(Offsets(cell)), Technique.Legato);

        Assert.Equal((strokes, slurs), (counts.Strokes, counts.Slurs));
    }

    [Theory]
    [InlineData(Lines.BoxUp, FirstStroke.Down, 0, "DUDUDUDUDUDU")]
    [InlineData(Lines.BoxUp, FirstStroke.Up, 1, "UDDUDUDUDUDU")]
    [InlineData(Lines.ThreePerString, FirstStroke.Down, 5, "DUDDUDDUDDUDDUDDUD")]
    public void Economy_carries_a_stroke_over_where_it_can(
        string places,
        FirstStroke first,
        int steps,
        string strokes
    )
    {
        var line = Lines.Of(places, Lines.With(Technique.Economy, first));
        var planned = Realizer.Plan(line, Player.At(2)).OrThrow();

        Assert.Equal(strokes, string.Concat(planned.Strokes.Strokes.Select(PickingCounts.LetterOf)));
        Assert.Equal(steps, PickingCounts.Of(planned, 10).SweepSteps);
    }

    // sweep steps, inside, skips inside, skips of sweep steps, down-strokes, up-strokes
    [Theory]
    [InlineData("0 1 2", "0 15 0 0 15 15")]
    [InlineData("0 1 2 3", "8 13 0 0 18 18")]
    [InlineData("0 1 2 3 4", "6 17 4 0 20 20")]
    [InlineData("0 1 2 3 4 5", "6 17 3 3 21 21")]
    public void Economy_of_sequences_is_counted(string cell, string expected)
    {
        var line = Lines.Of(Lines.Groups(Offsets(cell)), Lines.With(Technique.Economy));
        var planned = Realizer.Plan(line, Player.At(2)).OrThrow();
        var counts = PickingCounts.Of(planned, 10);
        var downs = planned.Strokes.Strokes.Count(stroke => stroke == Stroke.Down);

        Assert.Equal(0, counts.Outside);
        Assert.Equal(
            expected,
            FormattableString.Invariant(
                $"{counts.SweepSteps} {counts.Inside} {counts.InsideSkips} {counts.Skips - counts.InsideSkips} {downs} {counts.Strokes - downs}"
            )
        );
    }

    [Fact]
    public void Three_notes_a_string_alternate_outside_and_inside_in_turn()
    {
        var counts = Measured(Lines.ThreePerString, Technique.Alternate);
        var down = string.Join(' ', Lines.ThreePerString.Split(' ').Reverse());

        Assert.Equal((2, 3), (counts.Inside, counts.Outside));
        Assert.Equal(5, Measured(down, Technique.Economy, FirstStroke.Up).SweepSteps);
    }

    [Fact]
    public void Sweep_of_three_strings_is_one_movement_and_turns_inside()
    {
        var up = Measured("4:5 3:5 2:5", Technique.Sweep);
        var back = Measured("4:5 3:5 2:5 3:5 4:5", Technique.Sweep);

        Assert.Equal((2, 0, 3), (up.SweepSteps, up.Reversals, up.LongestSweep));
        Assert.Equal((3, 1, 1), (back.SweepSteps, back.Reversals, back.Inside));
    }

    [Fact]
    public void Three_strings_looped_by_alternation_visit_every_kind_of_change()
    {
        var line = Lines.Of("4:5 3:5 2:5 | 4:5 3:5 2:5 | 4:5 3:5 2:5 | 4:5", Lines.With(Technique.Alternate));
        var struck = Realizer.Plan(line, Player.At(2)).OrThrow().Strokes.Struck;
        var kinds = struck.Zip(struck.Skip(1), (a, b) => StrokeChange.Of(a.State, b.State)).Take(6);

        Assert.Equal(
            "Outside1 Inside1 Inside2 Inside1 Outside1 Outside2",
            string.Join(
                ' ',
                kinds.Select(change => FormattableString.Invariant($"{change.Kind}{change.Distance}"))
            )
        );
    }

    [Fact]
    public void Straight_box_travels_five_spacings_and_hops_five_strings()
    {
        var counts = Measured(Lines.BoxUp, Technique.Alternate);

        Assert.Equal(5, counts.TravelSpacings, 1e-9);
        Assert.Equal(5, counts.Hops);
    }

    [Fact]
    public void Hybrid_plucks_a_three_string_shape_without_travel()
    {
        var line = Lines.Of(
            string.Join(' ', Enumerable.Repeat("4:5 3:5 2:5", 4)),
            Lines.With(Technique.Hybrid)
        );
        var planned = Realizer.Plan(line, Player.At(2)).OrThrow();

        // Every move a finger or the plectrum after another: X = 140 ms at level 2; the last pass is swept.
        Assert.Equal("DmaDmaDmaDDD", string.Concat(planned.Strokes.Strokes.Select(PickingCounts.LetterOf)));
        Assert.All(
            planned.Strokes.Struck.Skip(1).Take(9),
            note => Assert.Equal(140, note.Demand.At(Player.At(2).Parameters.Basis), 1e-9)
        );
    }

    [Fact]
    public void Rake_drags_through_the_strings_that_a_swept_stroke_would_skip()
    {
        // 6:5 down to 4:5 down over string 5: a sweep step and half a one for the muted string, 80 + 40 ms at level 2,
        // against 190 ms for the same stroke over a skip.
        var player = Player.At(2);
        var raked = Realizer
            .Plan(Lines.Of("6:5 4:5", Lines.With(Technique.Rake)), player)
            .OrThrow()
            .Strokes.Struck[1];
        var swept = Realizer
            .Plan(Lines.Of("6:5 4:5", Lines.With(Technique.Sweep)), player)
            .OrThrow()
            .Strokes.Struck[1];

        Assert.Equal((Stroke.Down, 4, 5), (raked.State.Action, raked.State.String, raked.State.Anchor));
        Assert.Equal(120, raked.Demand.At(player.Parameters.Basis), 1e-9);
        Assert.Equal(190.1, swept.Demand.At(player.Parameters.Basis), 0.1);
    }

    [Fact]
    public void Tremolo_on_one_string_never_repeats_a_finger()
    {
        var line = Lines.Of("2:5 2:5 2:5 2:5 2:5 2:5 2:5 2:5", Lines.With(Technique.Fingers));
        var planned = Realizer.Plan(line, Player.At(2)).OrThrow();

        Assert.Equal(0, PickingCounts.Of(planned, 10).SameFingerAgain);
        Assert.Equal(
            7,
            planned.Strokes.Struck.Skip(1).Count(note => note.Demand.At(Player.At(2).Parameters.Basis) <= 130)
        );
    }

    [Fact]
    public void Thumb_index_and_middle_roll_without_repeating_a_finger()
    {
        var line = Lines.Of("4:5 3:5 2:5 4:5 3:5 2:5", Lines.With(Technique.Fingers));
        var planned = Realizer.Plan(line, Player.At(2)).OrThrow();
        var counts = PickingCounts.Of(planned, 10);

        Assert.Equal("pimpim", string.Concat(planned.Strokes.Strokes.Select(PickingCounts.LetterOf)));
        Assert.Equal((0, 0), (counts.SameFingerAgain, counts.BackwardCrossings));
    }

    private static PickingCounts Measured(
        string places,
        Technique technique,
        FirstStroke first = FirstStroke.Down
    ) =>
        PickingCounts.Of(
            Realizer.Plan(Lines.Of(places, Lines.With(technique, first)), Player.At(2)).OrThrow(),
            Geometry.Of(Fretboard.Standard).PickingSpacingMm
        );

    private static string Counts(string places, Technique technique, FirstStroke first = FirstStroke.Down)
    {
        var c = Measured(places, technique, first);
        return FormattableString.Invariant(
            $"{c.SameString} {c.Inside} {c.Outside} {c.SweepSteps} {c.Against} {c.Skips} {c.Reversals} {c.AfterDown} {c.AfterUp}"
        );
    }

    private static (int Down, int Up) After(string places)
    {
        var counts = Measured(places, Technique.Alternate);
        return (counts.AfterDown, counts.AfterUp);
    }

    private static string SkipsOf(string places)
    {
        var words = places.Split(' ').Where(word => word != "|").ToArray();
        return string.Join(
            ' ',
            words
                .Zip(words.Skip(1))
                .Where(pair => Math.Abs(pair.First[0] - pair.Second[0]) > 1)
                .Select(pair => $"{pair.First}>{pair.Second}")
        );
    }

    private static string JoinsOf(string places)
    {
        var groups = places.Split(" | ");
        return string.Join(
            ' ',
            groups.Zip(groups.Skip(1), (a, b) => Math.Abs(a[a.LastIndexOf(' ') + 1] - b[0]))
        );
    }

    private static int[] Offsets(string cell) => [.. cell.Split(' ').Select(offset => offset[0] - '0')];
}
