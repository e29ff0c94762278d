using CsCheck;
using Passagework.Exercises;
using Passagework.Instrument;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

public class LinePropertyTests
{
    private const int PathLength = 14;

    private static readonly Gen<Cell> AnyCell = Gen.Int[-3, 5]
        .Array[1, 8]
        .Select(
            Gen.Int[0, 8],
            (offsets, rest) =>
                new Cell
                {
                    Offsets = [.. offsets.Select((offset, i) => i > 0 && i == rest ? (int?)null : offset)],
                }
        );

    private static readonly Gen<int> AnyStep = Gen.Int[-7, 7].Where(step => step != 0);

    [Fact]
    public void Down_is_the_mirror_of_up() =>
        AnyCell
            .Select(AnyStep)
            .Sample(
                (cell, step) =>
                {
                    var up = Frets(cell, new Movement { Step = step });
                    var down = Frets(cell, new Movement { Step = step, Direction = Direction.Down });

                    return up.SequenceEqual(down.Select(fret => PathLength - 1 - fret));
                },
                iter: 2_000
            );

    [Fact]
    public void There_and_back_is_one_way_after_the_other() =>
        AnyCell
            .Select(AnyStep)
            .Sample(
                (cell, step) =>
                {
                    var up = Frets(cell, new Movement { Step = step });
                    var down = Frets(cell, new Movement { Step = step, Direction = Direction.Down });
                    var both = Frets(cell, new Movement { Step = step, Direction = Direction.DownAndUp });

                    return both.SequenceEqual([.. down, .. up]);
                },
                iter: 1_000
            );

    [Fact]
    public void A_line_is_the_slow_and_obvious_search_for_cells_that_fit() =>
        AnyCell
            .Select(AnyStep)
            .Sample(
                (cell, step) =>
                    Frets(cell, new Movement { Step = step }).SequenceEqual(EveryStartThatFits(cell, step)),
                iter: 2_000
            );

    [Fact]
    public void Notes_and_rests_fill_the_time_without_a_gap() =>
        AnyCell
            .Select(AnyStep)
            .Sample(
                (cell, step) =>
                {
                    var line = Moved(cell, new Movement { Step = step, Direction = Direction.UpAndDown });
                    var spans = line
                        .Notes.Select(note => (Start: note.Onset, note.End))
                        .Concat(
                            line.Rests.Select(rest => (Start: rest.Onset, End: rest.Onset + rest.Duration))
                        )
                        .OrderBy(span => span.Start)
                        .ToList();

                    return spans[0].Start == Passagework.Foundation.Fraction.Zero
                        && spans[^1].End == line.End
                        && spans.Zip(spans.Skip(1)).All(pair => pair.First.End == pair.Second.Start);
                },
                iter: 1_000
            );

    /// <summary>Tries every start on the path in turn, and keeps those that a walk from the first one reaches.</summary>
    private static IEnumerable<int> EveryStartThatFits(Cell cell, int step)
    {
        var fitting = Enumerable
            .Range(0, PathLength)
            .Where(start =>
                cell.Offsets.All(offset => offset is null || start + offset is >= 0 and < PathLength)
            )
            .ToList();
        var first = step > 0 ? fitting[0] : fitting[^1];
        for (var start = first; fitting.Contains(start); start += step)
        {
            foreach (var offset in cell.Offsets)
            {
                if (offset is { } steps)
                {
                    yield return start + steps;
                }
            }
        }
    }

    private static IEnumerable<int> Frets(Cell cell, Movement movement) =>
        Moved(cell, movement).Notes.Select(note => note.Place?.Fret ?? -1);

    private static Line Moved(Cell cell, Movement movement) =>
        Line(OnSteps(PathLength, 0) with { Cell = cell, Movement = movement });
}
