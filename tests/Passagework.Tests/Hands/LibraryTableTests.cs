using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands;

/// <summary>
/// The starting library in figures: rising forms, strict alternation from a down-stroke, fingers 1, 3 and 4 on frets 5,
/// 7 and 8. Plain counting, worked for the project by an independent program.
/// </summary>
public class LibraryTableTests
{
    // notes, string changes (per 100 moves), skips, rolls, inside/outside, notes on strings 6 to 1, fingers 1/3/4 in %,
    // largest leap in semitones
    [Theory]
    [InlineData("straight-up", "12 5 (45) 0 0 5/0 2-2-2-2-2-2 50/25/25 3")]
    [InlineData("groups-of-three-up", "30 15 (52) 0 0 15/0 3-6-6-6-6-3 50/30/20 3")]
    [InlineData("groups-of-four-up", "36 21 (60) 0 6 5/16 3-7-8-8-7-3 50/33/17 5")]
    [InlineData("groups-of-five-up", "40 23 (59) 4 0 20/3 3-7-10-10-7-3 50/35/15 8")]
    [InlineData("groups-of-six-up", "42 23 (56) 6 0 8/15 3-7-11-11-7-3 50/36/14 10")]
    [InlineData("reversed-threes-up", "30 19 (66) 4 0 14/5 3-6-6-6-6-3 50/30/20 8")]
    [InlineData("out-and-back-fours-up", "40 15 (38) 0 0 10/5 4-8-8-8-8-4 50/30/20 3")]
    [InlineData("out-and-back-sixes-up", "30 14 (48) 0 0 14/0 3-6-6-6-6-3 50/30/20 3")]
    [InlineData("every-other-note-up", "20 15 (79) 0 8 0/15 2-4-4-4-4-2 50/30/20 5")]
    [InlineData("skipped-fifths-up", "18 17 (100) 4 6 0/17 2-3-4-4-3-2 50/33/17 8")]
    [InlineData("pedal-up", "30 15 (52) 0 10 0/15 4-6-6-6-6-2 67/20/13 8")]
    [InlineData("pedal-down", "30 15 (52) 0 6 15/0 2-6-6-6-6-4 33/40/27 8")]
    [InlineData("one-sided-rolls-low-up", "12 11 (100) 0 11 6/5 1-2-3-3-2-1 100/0/0 5")]
    [InlineData("one-sided-rolls-high-up", "12 11 (100) 0 7 6/5 1-2-3-3-2-1 0/67/33 5")]
    [InlineData("three-string-sweeps-up", "24 19 (83) 0 13 11/8 2-4-6-6-4-2 50/33/17 5")]
    [InlineData("skipped-fours-up", "16 7 (47) 4 0 4/3 2-2-4-4-2-2 50/31/19 8")]
    [InlineData("two-string-loop", "24 8 (35) 0 0 0/8 0-0-0-0-12-12 50/0/50 3")]
    public void Exercise_is_counted(string id, string expected)
    {
        var recipe = Library.Find(id).OrThrow().Recipe;
        var line = LineBuilder.Build(recipe).OrThrow();
        var locks = line.Notes.Select(note => new Lock(
            note.Index,
            Finger: FingerOn(note.Place!.Value.Fret),
            Position: 5
        ));
        var locked = recipe with
        {
            Picking = new PickingPlan(),
            Fretting = new FrettingPlan { Locks = [.. locks] },
        };

        Assert.Equal(expected, Row(Measurer.Measure(locked, Player.At(2)).OrThrow()));
    }

    // Left free the programme chooses just these fingers at all levels, except in sixes, sweeps and on the higher
    // side.
    [Theory]
    [InlineData("straight-up")]
    [InlineData("groups-of-three-up")]
    [InlineData("groups-of-four-up")]
    [InlineData("groups-of-five-up")]
    [InlineData("reversed-threes-up")]
    [InlineData("out-and-back-fours-up")]
    [InlineData("out-and-back-sixes-up")]
    [InlineData("every-other-note-up")]
    [InlineData("skipped-fifths-up")]
    [InlineData("pedal-up")]
    [InlineData("one-sided-rolls-low-up")]
    [InlineData("skipped-fours-up")]
    [InlineData("two-string-loop")]
    public void Free_fingering_is_the_usual_one(string id)
    {
        var line = LineBuilder.Build(Library.Find(id).OrThrow().Recipe).OrThrow();
        for (var level = 0; level <= 4; level++)
        {
            var fingering = FingeringPlanner.Plan(line, Player.At(level)).OrThrow();

            Assert.All(fingering.Notes, note => Assert.Equal(FingerOn(note.Place.Fret), note.Finger));
        }
    }

    // Level 0 saves 0.3 of a cost of 174 by ending in position 7; exhaustive search agrees with the planner.
    [Theory]
    [InlineData(0, "2@7 2@7 1@7")]
    [InlineData(1, "4@5 4@5 3@5")]
    [InlineData(2, "4@5 4@5 3@5")]
    [InlineData(3, "4@5 4@5 3@5")]
    [InlineData(4, "4@5 4@5 3@5")]
    public void Sweeps_left_free_end_in_another_position_for_a_beginner(int level, string expected)
    {
        var line = LineBuilder.Build(Library.Find("three-string-sweeps-up").OrThrow().Recipe).OrThrow();

        var notes = FingeringPlanner.Plan(line, Player.At(level)).OrThrow().Notes;

        Assert.All(
            notes.Take(21),
            note => Assert.Equal((FingerOn(note.Place.Fret), 5), (note.Finger, note.Position))
        );
        Assert.Equal(
            expected,
            string.Join(' ', notes.Skip(21).Select(note => $"{note.Finger}@{note.Position}"))
        );
    }

    [Fact]
    public void Sweep_keeps_its_direction_in_sixteen_of_nineteen_changes()
    {
        var recipe = Library.Find("three-string-sweeps-up").OrThrow().Recipe;

        var counts = Measurer.Measure(recipe, Player.At(2)).OrThrow().Picking;

        Assert.Equal((16, 19), (counts.SweepSteps, counts.SweepSteps + counts.Inside + counts.Outside));
    }

    private static string Row(Measurement measured)
    {
        var notes = measured.Realization.Notes;
        var picking = measured.Picking;
        var changes = picking.Inside + picking.Outside;
        var strings = Enumerable
            .Range(1, 6)
            .Select(number => notes.Count(note => note.Place.String == 7 - number));
        var leap = notes.Zip(notes.Skip(1), (a, b) => Math.Abs(a.Note.Midi - b.Note.Midi)).Max();
        var share = measured.Fretting.FingerShare;
        return FormattableString.Invariant(
            $"{notes.Length} {changes} ({100.0 * changes / (notes.Length - 1):0}) {picking.Skips} {measured.Fretting.Rolls} {picking.Inside}/{picking.Outside} {string.Join('-', strings)} {100 * share[0]:0}/{100 * share[2]:0}/{100 * share[3]:0} {leap}"
        );
    }

    private static int FingerOn(int fret) =>
        fret switch
        {
            5 => 1,
            7 => 3,
            _ => 4,
        };
}
