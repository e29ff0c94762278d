using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

public class MeasurerTests
{
    // Effective fingers, balance and even load at levels 2 and 3: up-and-down forms, mean of both first strokes,
    // alternate unless said; computed for the project by an independent program.
    [Theory]
    [InlineData("groups-of-three", "", "2.800 0.8736 0.8736 0.8989 0.8989")]
    [InlineData("groups-of-four", "", "2.749 0.8571 0.8483 0.8745 0.8655")]
    [InlineData("groups-of-five", "", "2.714 0.8876 0.8673 0.9101 0.8893")]
    [InlineData("groups-of-six", "", "3.470 0.8528 0.8528 0.8750 0.8750")]
    [InlineData("every-other-note", "", "2.800 0.8292 0.8292 0.8364 0.8364")]
    [InlineData("one-sided-rolls-low", "sweep", "1.000 0.6233 0.2244 0.6221 0.2240")]
    [InlineData("one-sided-rolls-low", "", "1.000 0.8085 0.2911 0.7881 0.2837")]
    [InlineData("one-sided-rolls-high", "sweep", "1.890 0.6514 0.4431 0.6546 0.4454")]
    [InlineData("one-sided-rolls-high", "", "1.890 0.8456 0.5752 0.8307 0.5651")]
    public void Even_load_of_a_family_is_the_tabled_one(string family, string technique, string expected)
    {
        var swept = technique == "sweep" ? Technique.Sweep : Technique.Alternate;
        var (two, three) = (Family(family, swept, 2), Family(family, swept, 3));

        Assert.Equal(
            expected,
            FormattableString.Invariant(
                $"{two.Fingers:0.000} {two.Balance:0.0000} {two.EvenLoad:0.0000} {three.Balance:0.0000} {three.EvenLoad:0.0000}"
            )
        );
    }

    [Fact]
    public void Plain_scale_in_box_1_spreads_over_2_778_fingers()
    {
        var scale = ScaleReference.For(Recipe("straight-up"), Player.At(2));

        Assert.Equal(2.778, scale.EffectiveFingers, 0.0005);
    }

    [Theory]
    [InlineData("110 140 110 140", "120 95 180 95", 0.7069)]
    [InlineData("100 100 100 100", "180 180 180 180", 0.5556)]
    [InlineData("50 200 50 200", "200 50 200 50", 0.2500)]
    [InlineData("100 100", "100 100", 1)]
    public void Balance_is_the_worked_one_and_symmetric(string one, string other, double expected)
    {
        double[] a = [.. one.Split(' ').Select(double.Parse)];
        double[] b = [.. other.Split(' ').Select(double.Parse)];

        Assert.Equal(expected, Balance.Of(a, b) ?? 0, 0.00005);
        Assert.Equal(Balance.Of(a, b), Balance.Of(b, a));
    }

    // Relative difficulty against the plain scale at the five levels; computed for the project.
    [Theory]
    [InlineData("groups-of-six-up", "1.14 1.17 1.21 1.24 1.22")]
    [InlineData("groups-of-five-up", "1.07 1.06 1.06 1.05 1.06")]
    [InlineData("every-other-note-up", "1.24 1.22 1.20 1.19 1.19")]
    public void Relative_difficulty_by_level_is_the_tabled_one(string id, string expected)
    {
        var growth = Growth.Of(Recipe(id), Player.At(2)).OrThrow();

        Assert.Equal(
            expected,
            string.Join(
                ' ',
                growth.Levels.Select(level => FormattableString.Invariant($"{level.RelativeDifficulty:0.00}"))
            )
        );
    }

    [Fact]
    public void Fives_at_sixty_load_the_hands_as_worked()
    {
        // Sixteenths at 60, level 2: worst single loads 0.90, 0.84, 0.66; windowed 0.804, 0.758, 0.632.
        var player = Player.At(2);
        var demands = Realizer
            .Plan(LineBuilder.Build(Recipe("groups-of-five-up")).OrThrow(), player)
            .OrThrow()
            .Demands;
        var basis = player.Parameters.Basis;
        LoadList[] hands = [demands.Fretting, demands.Picking, demands.Together];

        Assert.Equal("0.90 0.84 0.66", Text(hands.Select(hand => 4 * hand.Loads(basis).Max()), "0.00"));
        Assert.Equal(
            "0.804 0.758 0.632",
            Text(hands.Select(hand => 4 * WindowedLoad.Of(hand.Loads(basis), 8, 0.12)), "0.000")
        );
    }

    [Fact]
    public void Move_over_a_skipped_string_carries_nearly_all_of_the_window_of_fives()
    {
        // The worst window at level 2, in ms, and the share of the one move in its sum of powers.
        double[] window = [159, 171, 151, 171, 225, 171, 151, 171];
        var powers = window.Select(ms => Math.Pow(ms, WindowedLoad.Power(8, 0.12))).ToArray();
        var player = Player.At(2);
        var moves = Measurer.Measure(Recipe("groups-of-five-up"), player).OrThrow().Demands;

        Assert.Equal(window, moves.Skip(1).Take(8).Select(move => Math.Round(move.FrettingMs ?? 0)));
        Assert.Equal(0.97, powers[4] / powers.Sum(), 0.005);
    }

    [Theory]
    [InlineData(8, 0.12, 18.35)]
    [InlineData(4, 0.12, 12.23)]
    [InlineData(8, 0.10, 21.82)]
    [InlineData(8, 0.15, 14.88)]
    [InlineData(16, 0.12, 24.47)]
    public void Power_of_the_window_is_the_tabled_one(int window, double tolerance, double expected) =>
        Assert.Equal(expected, WindowedLoad.Power(window, tolerance), 0.005);

    [Fact]
    public void One_hard_move_among_easy_ones_just_passes_its_tolerance()
    {
        double[] loads = [0.5, 0.5, 0.5, 1.25, 0.5, 0.5, 0.5, 0.5];

        Assert.Equal(1.116, WindowedLoad.Of(loads, 8, 0.12), 0.0005);
    }

    [Theory]
    [InlineData(5, 0.952)]
    [InlineData(15, 0.893)]
    [InlineData(30, 0.853)]
    [InlineData(60, 0.833)]
    public void Long_bouts_are_slower(double seconds, double expected)
    {
        Assert.Equal(expected, Ceiling.DurationFactor(seconds), 0.0005);
        Assert.Equal(1, Ceiling.DurationFactor(seconds, load: 0.6));
    }

    [Fact]
    public void Every_ceiling_rises_with_the_level()
    {
        foreach (var exercise in Library.All)
        {
            var growth = Growth.Of(exercise.Recipe, Player.At(2)).OrThrow();

            var least = growth.Levels.Select(level => level.Ceiling.Least ?? 0).ToArray();
            Assert.Equal((exercise.Id, least.Order()), (exercise.Id, least.AsEnumerable()), SameOrder);
        }
    }

    [Fact]
    public void Threes_are_never_slower_than_fives_nor_fives_than_sixes()
    {
        for (var level = 0; level <= 4; level++)
        {
            var least = new[] { "groups-of-three-up", "groups-of-five-up", "groups-of-six-up" }
                .Select(id => Measurer.Measure(Recipe(id), Player.At(level)).OrThrow().Ceiling.Least ?? 0)
                .ToArray();

            Assert.True(least[0] >= least[1] && least[1] >= least[2], $"level {level}");
        }
    }

    [Fact]
    public void Doubled_durations_halve_every_load_and_leave_the_rest()
    {
        var recipe = Recipe("groups-of-four-up");
        var slow = recipe with
        {
            Cell = recipe.Cell! with
            {
                Durations = [Fraction.Of(2), Fraction.Of(2), Fraction.Of(2), Fraction.Of(2)],
            },
        };
        var (one, two) = (
            Measurer.Measure(recipe, Player.At(2)).OrThrow(),
            Measurer.Measure(slow, Player.At(2)).OrThrow()
        );

        Assert.Equal(2 * one.Ceiling.Least ?? 0, two.Ceiling.Least ?? 0, 1e-9);
        Assert.Equal(one.Balance, two.Balance);
        Assert.Equal(one.Demands, two.Demands);
    }

    [Fact]
    public void Moving_along_the_neck_changes_no_stroke()
    {
        var here = Measurer.Measure(Recipe("groups-of-five-up"), Player.At(2)).OrThrow();
        var recipe = RecipeChange.Root(Recipe("groups-of-five-up"), "C").OrThrow();
        var there = Measurer.Measure(recipe, Player.At(2)).OrThrow();

        Assert.Equal("6:8", there.Realization.Notes[0].Place.ToString());
        Assert.Equal(
            here.Realization.Notes.Select(note => note.Stroke),
            there.Realization.Notes.Select(note => note.Stroke)
        );
    }

    [Fact]
    public void All_down_on_one_string_is_half_as_fast_as_alternate()
    {
        var line = string.Join(' ', Enumerable.Repeat("4:5 4:7", 8));
        var alternate = Picking(line, Technique.Alternate);

        Assert.Equal(alternate / 2, Picking(line, Technique.AllDown), 1e-9);
    }

    [Theory]
    [InlineData("4:5 4:7 4:5 4:7 4:5 4:7 4:5 4:7 4:5 4:7", "4:5 4:7 4:5 4:7 3:5 3:7 3:5 3:7 3:5 3:7")]
    [InlineData("4:5 4:7 4:5 4:7 4:5 4:7 4:5 4:7 4:5 4:7", "4:5 4:7 4:5 4:7 4:5 2:7 2:5 2:7 2:5 2:7")]
    public void String_change_in_place_of_a_same_string_move_cannot_speed_up_the_picking_hand(
        string same,
        string changed
    ) => Assert.True(Picking(changed, Technique.Alternate) <= Picking(same, Technique.Alternate));

    [Fact]
    public void Easier_moves_at_the_end_cannot_lower_a_ceiling() =>
        Gen.Int[1, 6]
            .Sample(more =>
            {
                var places = Lines.Groups(0, 1, 2, 3, 4);
                var longer = places + " | " + string.Join(' ', Enumerable.Repeat("1:8 1:5", more));

                Assert.True(Fretting(longer) >= Fretting(places) - 1e-9);
            });

    [Theory]
    [InlineData(Ending.HoldRoot)]
    [InlineData(Ending.FillBar)]
    [InlineData(Ending.HoldLast)]
    public void Notes_added_by_an_ending_change_nothing_about_the_groups(Ending ending)
    {
        var recipe = Recipe("groups-of-five-up");
        var ended = recipe with { Movement = recipe.Movement with { Ending = ending, To = 9 } };
        var plain = recipe with { Movement = recipe.Movement with { To = 9 } };

        Assert.Equal(
            Measurer.Measure(plain, Player.At(2)).OrThrow().Fit?.Sentence,
            Measurer.Measure(ended, Player.At(2)).OrThrow().Fit?.Sentence
        );
        Assert.Equal(5, Measurer.Measure(ended, Player.At(2)).OrThrow().Fit?.BarsToRealign);
    }

    [Fact]
    public void Same_question_has_the_same_answer_twice()
    {
        string Once() =>
            string.Join(
                ' ',
                Measurer.Measure(Recipe("groups-of-seven-up"), Player.At(1.3)).OrThrow().Ceiling.Range!.Draws
            );

        Assert.Equal(Once(), Once());
    }

    [Fact]
    public void Open_strings_alone_leave_the_fretting_hand_free()
    {
        var line = Lines.Of("6:0 5:0 4:0 3:0");

        var measured = Measurer.Measure(line, Player.At(2)).OrThrow();

        Assert.Null(measured.Ceiling.Fretting);
        Assert.Null(measured.Ceiling.Together);
        Assert.NotNull(measured.Ceiling.Picking);
        Assert.Equal(1, measured.Fretting.EffectiveFingers);
        Assert.All(measured.Realization.Notes, note => Assert.Equal((0, 1), (note.Finger, note.Position)));
    }

    [Fact]
    public void One_note_asks_nothing()
    {
        var measured = Measurer.Measure(Lines.Of("5:7"), Player.At(2)).OrThrow();

        Assert.Null(measured.Ceiling.Least);
        Assert.Null(measured.Ceiling.LimitedBy);
        Assert.Null(measured.Balance);
    }

    private static readonly IEqualityComparer<(string, IEnumerable<double>)> SameOrder = EqualityComparer<(
        string,
        IEnumerable<double>
    )>.Create((a, b) => a.Item1 == b.Item1 && a.Item2.SequenceEqual(b.Item2));

    private static Recipe Recipe(string id) => Library.Find(id).OrThrow().Recipe;

    private static (double Fingers, double Balance, double EvenLoad) Family(
        string family,
        Technique technique,
        int level
    )
    {
        var recipe = Recipe(family + "-up-and-down");
        var both = new[] { FirstStroke.Down, FirstStroke.Up }
            .Select(first =>
                recipe with
                {
                    Picking = new PickingPlan { Technique = technique, First = first },
                }
            )
            .Select(form => Measurer.Measure(form, Player.At(level)).OrThrow())
            .ToArray();
        return (
            both[0].Fretting.EffectiveFingers,
            both.Average(measured => measured.Balance ?? 0),
            both.Average(measured => measured.EvenLoad ?? 0)
        );
    }

    private static double Picking(string places, Technique technique) =>
        Measurer.Measure(Lines.Of(places, Lines.With(technique)), Player.At(2)).OrThrow().Ceiling.Picking
        ?? 0;

    private static double Fretting(string places) =>
        Measurer.Measure(Lines.Of(places), Player.At(2)).OrThrow().Ceiling.Fretting ?? 0;

    private static string Text(IEnumerable<double> values, string format) =>
        string.Join(
            ' ',
            values.Select(value => value.ToString(format, System.Globalization.CultureInfo.InvariantCulture))
        );
}
