using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands;

/// <summary>What the fretting hand does in well-known figures over box 1 of A minor pentatonic at fret 5.</summary>
public class FrettingFactsTests
{
    // Finger 1 on fret 5, 3 on 7, 4 on 8 (common practice); rolls and shares worked by hand for the project.
    [Theory]
    [InlineData("0 1 2", "0 0 50/30/20")]
    [InlineData("0 1 2 3", "6 0 50/33/17")]
    [InlineData("0 1 2 3 4", "0 0 50/35/15")]
    [InlineData("0 1 2 3 4 5", "0 4 50/36/14")]
    [InlineData("0 2", "8 0 50/30/20")]
    public void Natural_fingering_is_counted(string cell, string expected)
    {
        var counts = Natural(Lines.Groups([.. cell.Split(' ').Select(offset => offset[0] - '0')]));

        Assert.Equal(
            expected,
            FormattableString.Invariant(
                $"{counts.Rolls} {counts.SameFingerMoves} {100 * counts.FingerShare[0]:0}/{100 * counts.FingerShare[2]:0}/{100 * counts.FingerShare[3]:0}"
            )
        );
    }

    [Fact]
    public void Fives_by_two_steps_roll_the_first_finger_at_every_join()
    {
        var counts = Natural(
            "6:5 6:8 5:5 5:7 4:5 | 5:5 5:7 4:5 4:7 3:5 | 4:5 4:7 3:5 3:7 2:5 | 3:5 3:7 2:5 2:8 1:5"
        );

        Assert.Equal((3, 0), (counts.Rolls, counts.SameFingerMoves));
    }

    // Rolls forced on one side of the box: any three neighbouring strings.
    [Theory]
    [InlineData("4:5 3:5 2:5", 2)]
    [InlineData("3:5 2:5 1:5", 2)]
    [InlineData("6:5 5:5 4:5", 2)]
    [InlineData("6:8 5:7 4:7", 1)]
    [InlineData("5:7 4:7 3:7", 2)]
    [InlineData("4:7 3:7 2:8", 1)]
    [InlineData("3:7 2:8 1:8", 1)]
    public void One_side_of_the_box_rolls(string places, int rolls) =>
        Assert.Equal(rolls, Natural(places).Rolls);

    // Counted on the neck: box 1 spans frets 5 to 8; open strings are no stretch; two positions count apart.
    [Theory]
    [InlineData("6:5 6:8 5:5 5:7", 3)]
    [InlineData("6:5 5:5 4:5", 0)]
    [InlineData("6:0 6:3 5:0 5:2", 1)]
    [InlineData("6:5 6:8 6:17 6:19", 3)]
    public void Stretch_is_the_width_of_one_position(string places, int frets)
    {
        var fingering = FingeringPlanner.Plan(Lines.Of(places), Player.At(2)).OrThrow();

        Assert.Equal(frets, FrettingCounts.Of(fingering).Stretch);
    }

    [Fact]
    public void Lower_side_rolls_the_first_finger_at_all_levels()
    {
        for (var level = 0; level <= 4; level++)
        {
            var fingering = FingeringPlanner
                .Plan(Lines.Of("6:5 5:5 4:5 3:5 2:5 1:5"), Player.At(level))
                .OrThrow();

            Assert.All(fingering.Notes, note => Assert.Equal((1, 5), (note.Finger, note.Position)));
        }
    }

    [Fact]
    public void Higher_side_left_free_rolls_in_position_7_at_all_levels()
    {
        for (var level = 0; level <= 4; level++)
        {
            const string places = "6:8 5:7 4:7 | 5:7 4:7 3:7 | 4:7 3:7 2:8 | 3:7 2:8 1:8";
            var fingering = FingeringPlanner.Plan(Lines.Of(places), Player.At(level)).OrThrow();

            Assert.All(
                fingering.Notes,
                note => Assert.Equal(note.Place.Fret == 7 ? (1, 7) : (2, 7), (note.Finger, note.Position))
            );
        }
    }

    [Theory]
    [InlineData(Lines.BoxUpAndDown)]
    [InlineData("0 1 2")]
    [InlineData("0 1 2 3")]
    [InlineData("0 1 2 3 4")]
    public void Box_1_is_played_in_one_position_at_all_levels(string figure)
    {
        var places = figure.Contains(':', StringComparison.Ordinal)
            ? figure
            : Lines.Groups([.. figure.Split(' ').Select(offset => offset[0] - '0')]);
        for (var level = 0; level <= 4; level++)
        {
            var fingering = FingeringPlanner.Plan(Lines.Of(places), Player.At(level)).OrThrow();

            Assert.All(
                fingering.Notes,
                note => Assert.Equal((FingerOn(note.Place.Fret), 5), (note.Finger, note.Position))
            );
        }
    }

    [Fact]
    public void First_five_notes_cost_what_full_enumeration_found()
    {
        // J = 8.681 over all 11⁵ sequences, level 2 (worked for the project).
        var fingering = FingeringPlanner.Plan(Lines.Of("6:5 6:8 5:5 5:7 4:5"), Player.At(2)).OrThrow();

        Assert.Equal(8.681, fingering.Cost, 0.0005);
        Assert.Equal("1 4 1 3 1", string.Join(' ', fingering.Notes.Select(note => note.Finger)));
    }

    [Fact]
    public void Repeated_note_is_played_by_the_first_finger_in_its_own_position()
    {
        var fingering = FingeringPlanner.Plan(Lines.Of("4:5 4:5 4:5 4:5"), Player.At(2)).OrThrow();

        Assert.All(fingering.Notes, note => Assert.Equal((1, 5), (note.Finger, note.Position)));
    }

    [Fact]
    public void Repeated_notes_are_neither_rolls_nor_moves_of_one_finger()
    {
        var counts = FrettingCounts.Of(
            FingeringPlanner.Plan(Lines.Of("4:5 4:5 4:5 3:5 3:5"), Player.At(2)).OrThrow()
        );

        Assert.Equal((1, 0, 0), (counts.Rolls, counts.SameFingerMoves, counts.Shifts));
    }

    [Fact]
    public void Line_that_begins_open_begins_in_the_position_of_its_first_fretted_note()
    {
        var fingering = FingeringPlanner.Plan(Lines.Of("5:0 5:2 5:3"), Player.At(2)).OrThrow();

        Assert.Equal(
            "0@2 1@2 2@2",
            string.Join(' ', fingering.Notes.Select(note => $"{note.Finger}@{note.Position}"))
        );
    }

    // Little finger avoided, level 2: thirds of fingers throughout, the hand moves up a fret and back (worked for the
    // project by an independent program).
    [Theory]
    [InlineData("0 1 2", "6 6 5 6 5 5 5 5 5 5 5 5 5 5 5 5 5 5 5 5 5 5 5 6 5 6 5 6 5 6", 3.86, 0.75)]
    [InlineData("0 1 2 3 4", null, 3.66, 0.80)]
    public void Avoided_little_finger_moves_the_hand(
        string cell,
        string? positions,
        double ceiling,
        double balance
    )
    {
        var player = Player.At(2) with { Avoid = [4] };
        var line = Lines.Of(Lines.Groups([.. cell.Split(' ').Select(offset => offset[0] - '0')]));

        var planned = Realizer.Plan(line, player).OrThrow();

        var counts = FrettingCounts.Of(planned.Fingering);
        var basis = player.Parameters.Basis;
        Assert.Equal(
            (10, 0, "2.00"),
            (counts.Shifts, counts.Rolls, FormattableString.Invariant($"{counts.EffectiveFingers:0.00}"))
        );
        Assert.Equal(ceiling, CeilingFinder.Plain(planned.Demands, player.Parameters).Fretting ?? 0, 0.005);
        Assert.Equal(
            balance,
            Balance.Of(
                planned.Demands.Fretting.Milliseconds(basis),
                planned.Demands.Picking.Milliseconds(basis)
            ) ?? 0,
            0.005
        );
        if (positions is not null)
        {
            Assert.Equal(positions, string.Join(' ', planned.Fingering.Notes.Select(note => note.Position)));
        }
    }

    [Fact]
    public void Lock_beats_an_avoided_finger()
    {
        var recipe = new Recipe
        {
            Fretting = new FrettingPlan { Avoid = [4], Locks = [new Lock(1, Finger: 4)] },
        };

        var fingering = FingeringPlanner.Plan(Lines.Of(Lines.BoxUp, recipe), Player.At(2)).OrThrow();

        Assert.Equal(4, fingering.Notes[1].Finger);
        Assert.Single(fingering.Notes, note => note.Finger == 4);
    }

    [Fact]
    public void Locks_on_string_and_position_are_honoured()
    {
        var recipe = new Recipe
        {
            Fretting = new FrettingPlan { Locks = [new Lock(2, String: 6), new Lock(4, Position: 4)] },
        };

        var fingering = FingeringPlanner.Plan(Lines.Of(Lines.BoxUp, recipe), Player.At(2)).OrThrow();

        Assert.Equal("6:10", fingering.Notes[2].Place.ToString());
        Assert.Equal(4, fingering.Notes[4].Position);
    }

    [Fact]
    public void Impossible_line_names_the_pair_of_notes()
    {
        var recipe = new Recipe
        {
            Fretting = new FrettingPlan
            {
                Locks = [new Lock(0, Finger: 1, Position: 1), new Lock(1, Finger: 4, Position: 1)],
            },
        };
        var small = Player.At(2) with { HandSize = 0.5 };

        var refused = FingeringPlanner.Plan(Lines.Of("5:1 5:4", recipe), small).TryGet(out _, out var fault);

        Assert.False(refused);
        Assert.Equal(
            "bar 1, beat 1¼: no hand can play note 0 (5:1) and then note 1 (5:4); move one of them, free a lock or allow another finger",
            fault?.ToString()
        );
    }

    [Fact]
    public void Easiest_worst_move_never_has_a_harder_worst_move()
    {
        var line = Lines.Of("6:1 6:5 5:9 1:1 1:12 6:3 2:7");
        var player = Player.At(2);

        var plain = FingeringPlanner.Plan(line, player).OrThrow();
        var easiest = FingeringPlanner.Plan(line, player, FingeringAim.EasiestWorstMove).OrThrow();

        Assert.True(Worst(line, easiest, player) <= Worst(line, plain, player));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(12)]
    public void Box_keeps_its_fingers_along_the_neck(int fret) =>
        Assert.Equal(Fingers(5, 0, Lines.BoxUpAndDown), Fingers(fret, 0, Lines.BoxUpAndDown));

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    public void Box_keeps_its_fingers_under_a_capo(int capo) =>
        Assert.Equal(Fingers(5, 0, Lines.Groups(0, 1, 2, 3)), Fingers(5, capo, Lines.Groups(0, 1, 2, 3)));

    [Fact]
    public void Sixes_change_finger_high_on_the_neck_and_under_a_capo()
    {
        var sixes = Lines.Groups(0, 1, 2, 3, 4, 5);

        Assert.NotEqual(Fingers(5, 0, sixes), Fingers(8, 0, sixes));
        Assert.NotEqual(Fingers(5, 0, sixes), Fingers(5, 3, sixes));
        Assert.NotEqual(Fingers(5, 0, Lines.BoxUpAndDown), Fingers(1, 0, Lines.BoxUpAndDown));
    }

    private static string Fingers(int fret, int capo, string places)
    {
        var moved = string.Join(
            ' ',
            places
                .Split(' ')
                .Select(word =>
                    word == "|" ? word : FormattableString.Invariant($"{word[0]}:{word[2] - '5' + fret}")
                )
        );
        var recipe = new Recipe { Instrument = new Fretboard { Capo = capo } };
        return string.Join(
            " / ",
            Enumerable
                .Range(0, 5)
                .Select(level => FingeringPlanner.Plan(Lines.Of(moved, recipe), Player.At(level)).OrThrow())
                .Select(fingering => string.Concat(fingering.Notes.Select(note => note.Finger)))
        );
    }

    private static double Worst(Line line, Fingering fingering, Player player)
    {
        var strokes = StrokePlanner.Plan(line, fingering, player).OrThrow();
        var demands = new LineDemands(line, fingering, strokes, player);
        return demands.Fretting.Loads(player.Parameters.Basis).Max();
    }

    private static FrettingCounts Natural(string places)
    {
        var notes = places.Split(' ').Where(word => word != "|").ToArray();
        var locks = notes.Select((word, i) => new Lock(i, Finger: FingerOn(word[2] - '0'), Position: 5));
        var recipe = new Recipe { Fretting = new FrettingPlan { Locks = [.. locks] } };
        return FrettingCounts.Of(FingeringPlanner.Plan(Lines.Of(places, recipe), Player.At(2)).OrThrow());
    }

    private static int FingerOn(int fret) =>
        fret switch
        {
            5 => 1,
            7 => 3,
            _ => 4,
        };
}
