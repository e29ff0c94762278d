using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Tests.Instrument;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

/// <summary>Which notes of a cell are reached without a stroke; worked by hand.</summary>
public class SlurTests
{
    [Fact]
    public void Same_string_slurs_the_rest_of_a_cell_on_its_string() =>
        Assert.Equal("6:5 6:8~ 5:5 5:7~ | 6:8 5:5 5:7~ 4:5", Slurred(SameString, 5, 0, 1, 2, 3));

    [Fact]
    public void Same_string_strikes_a_repeated_note() =>
        Assert.Equal("6:5 6:5 6:8~", Slurred(SameString, 2, 0, 0, 1));

    [Fact]
    public void Same_string_strikes_the_first_note_of_every_cell() =>
        Assert.Equal("6:5 | 6:8", Slurred(SameString, 2, 0));

    [Fact]
    public void Same_string_goes_on_from_a_shared_note() =>
        Assert.Equal(
            "6:5 6:8~ | 6:5~",
            Places(
                Line(
                    Recipe(SameString, 2, 0, 1) with
                    {
                        Movement = new Movement
                        {
                            Direction = Direction.UpAndDown,
                            Turn = Turn.Shared,
                            To = 1,
                        },
                    }
                )
            )
        );

    [Fact]
    public void Listed_entries_are_reached_without_a_stroke_from_another_string_too() =>
        Assert.Equal(
            "6:5 6:8 5:5~ | 6:8 5:5 5:7~",
            Slurred(new CellSlurs(SameString: false, [2]), 4, 0, 1, 2)
        );

    [Fact]
    public void Listed_entries_that_repeat_a_note_are_struck_all_the_same() =>
        // The second cell begins with the note that the first ended on.
        Assert.Equal("6:5~ 6:8 | 6:8 5:5", Slurred(new CellSlurs(SameString: false, [0]), 3, 0, 1));

    private static readonly CellSlurs SameString = new(SameString: true, []);

    private static string Slurred(CellSlurs slurs, int pathLength, params int?[] offsets) =>
        Places(Line(Recipe(slurs, pathLength, offsets)));

    private static Recipe Recipe(CellSlurs slurs, int pathLength, params int?[] offsets) =>
        new()
        {
            Notes = Necks.Notes("A", "minor pentatonic"),
            Layout = new Layout.Box(1, 5),
            Cell = new Cell { Offsets = [.. offsets], Slurs = slurs },
            Movement = new Movement { To = pathLength - 1 },
        };
}
