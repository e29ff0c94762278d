using Passagework.Exercises;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

/// <summary>How cells move along a path; worked by hand on paths where fret and path index are the same.</summary>
public class MovementTests
{
    [Theory]
    [InlineData(1, "0 1 2 | 1 2 3 | 2 3 4 | 3 4 5")]
    [InlineData(2, "0 1 2 | 2 3 4")]
    [InlineData(3, "0 1 2 | 3 4 5")]
    [InlineData(-1, "3 4 5 | 2 3 4 | 1 2 3 | 0 1 2")]
    [InlineData(-2, "3 4 5 | 1 2 3")]
    [InlineData(7, "0 1 2")]
    public void Build_moves_the_cell_by_the_step(int step, string expected) =>
        Assert.Equal(expected, Moved(new Movement { Step = step }, 6, 0, 1, 2));

    [Theory]
    [InlineData(Direction.Up, "0 2 1 | 1 3 2 | 2 4 3")]
    [InlineData(Direction.Down, "4 2 3 | 3 1 2 | 2 0 1")]
    [InlineData(Direction.UpAndDown, "0 2 1 | 1 3 2 | 2 4 3 | 4 2 3 | 3 1 2 | 2 0 1")]
    [InlineData(Direction.DownAndUp, "4 2 3 | 3 1 2 | 2 0 1 | 0 2 1 | 1 3 2 | 2 4 3")]
    public void Build_mirrors_the_cell_going_down(Direction direction, string expected) =>
        Assert.Equal(expected, Moved(new Movement { Direction = direction }, 5, 0, 2, 1));

    [Fact]
    public void Build_goes_down_from_as_far_along_the_reversed_path_as_it_can_with_a_negative_step() =>
        Assert.Equal(
            "2 1 0 | 3 2 1 | 4 3 2",
            Moved(new Movement { Direction = Direction.Down, Step = -1 }, 5, 0, 1, 2)
        );

    [Fact]
    public void Build_starts_where_negative_offsets_lie_on_the_path() =>
        Assert.Equal("1 0 2 | 2 1 3 | 3 2 4", Moved(new Movement(), 5, 0, -1, 1));

    [Fact]
    public void Build_starts_cells_on_the_path_even_where_they_do_not_play_their_start() =>
        Assert.Equal("1 2 | 2 3 | 3 4", Moved(new Movement(), 5, 1, 2));

    [Fact]
    public void Build_plays_the_first_cell_again_with_a_step_of_zero() =>
        Assert.Equal("0 1 | 0 1 | 0 1", Moved(new Movement { Step = 0, Repeat = 3 }, 5, 0, 1));

    [Fact]
    public void Build_repeats_the_whole_and_numbers_the_groups_on()
    {
        var line = Line(
            OnSteps(3, 0, 1) with
            {
                Movement = new Movement { Direction = Direction.UpAndDown, Repeat = 2 },
            }
        );

        Assert.Equal("0 1 | 1 2 | 2 1 | 1 0 | 0 1 | 1 2 | 2 1 | 1 0", Frets(line));
        Assert.Equal(7, line.Notes[^1].Group);
    }

    [Fact]
    public void Build_uses_only_the_named_part_of_the_path() =>
        Assert.Equal(
            "2 3 | 3 4 | 4 3 | 3 2",
            Moved(
                new Movement
                {
                    From = 2,
                    To = 4,
                    Direction = Direction.UpAndDown,
                },
                8,
                0,
                1
            )
        );

    [Theory]
    [InlineData(Direction.UpAndDown, "0 1 2 | 1 2 3 | 2 1 | 2 1 0")]
    [InlineData(Direction.DownAndUp, "3 2 1 | 2 1 0 | 1 2 | 1 2 3")]
    public void Build_plays_a_shared_note_once_and_shortens_its_group(Direction direction, string expected) =>
        Assert.Equal(expected, Moved(new Movement { Direction = direction, Turn = Turn.Shared }, 4, 0, 1, 2));

    [Fact]
    public void Build_counts_the_entries_left_in_a_group_shortened_by_a_shared_turn()
    {
        var line = Line(
            OnSteps(4, 0, 1, 2) with
            {
                Movement = new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared },
            }
        );

        Assert.Equal([0, 1, 2, 0, 1, 2, 0, 1, 0, 1, 2], line.Notes.Select(note => note.InGroup ?? -1));
        Assert.Equal([0, 0, 0, 1, 1, 1, 2, 2, 3, 3, 3], line.Notes.Select(note => note.Group ?? -1));
        Assert.Equal([0, 3, 8], line.Notes.Where(note => note.Accent).Select(note => note.Index));
    }

    [Fact]
    public void Build_drops_a_group_that_was_only_the_shared_note()
    {
        var line = Line(
            OnSteps(3, 0) with
            {
                Movement = new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared },
            }
        );

        Assert.Equal("0 | 1 | 2 | 1 | 0", Frets(line));
        Assert.Equal([0, 1, 2, 3, 4], line.Notes.Select(note => note.Group ?? -1));
    }

    [Fact]
    public void Build_shares_nothing_where_no_note_repeats() =>
        Assert.Equal(
            "0 2 1 | 1 3 2 | 3 1 2 | 2 0 1",
            Moved(new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared }, 4, 0, 2, 1)
        );

    [Fact]
    public void Build_shares_nothing_across_a_rest() =>
        Assert.Equal(
            "0 1 | 1 2 | 2 1 | 1 0",
            Moved(new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared }, 3, 0, 1, null)
        );

    [Fact]
    public void Build_shares_only_the_turn_of_each_repeat() =>
        Assert.Equal(
            "0 1 | 0 | 0 1 | 0",
            Moved(
                new Movement
                {
                    Direction = Direction.UpAndDown,
                    Turn = Turn.Shared,
                    Repeat = 2,
                },
                2,
                0,
                1
            )
        );

    private static string Moved(Movement movement, int pathLength, params int?[] offsets) =>
        Frets(Line(OnSteps(pathLength, offsets) with { Movement = movement }));
}
