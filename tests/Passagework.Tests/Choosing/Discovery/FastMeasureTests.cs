using CsCheck;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;

namespace Passagework.Tests.Choosing.Discovery;

public class FastMeasureTests
{
    // Rounding alone: sums are taken in another order.
    private const double Tolerance = 1e-9;

    [Fact]
    public void Cells_by_table_equal_the_full_measurement() => Check(100, tablesOnly: true);

    [Fact]
    public void Cells_beyond_tables_equal_the_full_measurement() => Check(30, tablesOnly: false);

    [Fact]
    public void Boxes_are_measured_by_table_and_slurs_are_not()
    {
        Assert.True(IsByTable(CellSpace.Usual(5), new Layout.Box(1, 5)));
        Assert.True(IsByTable(CellSpace.Usual(5), new Layout.OpenPosition()));
        Assert.False(
            IsByTable(
                CellSpace.Usual(5) with
                {
                    Picking = new PickingPlan { Technique = Technique.Legato },
                },
                new Layout.Box(1, 5)
            )
        );
    }

    // Open strings carry the hand; these lines leave out the places that would let it stand elsewhere.
    [Theory]
    [InlineData("6:0 6:3 5:0 5:2 4:0 4:9 3:0 3:12", 2, "0 1 0")]
    [InlineData("6:0 6:9 5:0 5:2 4:0 4:2 3:0", 3, "0 0 0")]
    [InlineData("1:0 2:5 1:3 2:0 3:12 1:0 2:7", 2, "0 2 0 1")]
    [InlineData("6:0 5:0 4:0 3:7", 3, "0 0 0")]
    public void Open_strings_are_measured_by_table(string places, int step, string cell)
    {
        var layout = new Layout.Given([
            .. places.Split(' ').Select(text => Place.TryParse(text, out var place) ? place : default),
        ]);
        int[] offsets = [.. cell.Split(' ').Select(int.Parse)];
        foreach (var direction in Enum.GetValues<Direction>())
        {
            var space = CellSpace.Usual(offsets.Length) with
            {
                Layouts = [layout],
                Directions = [direction],
                Step = step,
            };
            var judge = new CellJudge(Player.At(2), Music.Value);
            var measurer = new CellVariant(space, 0, 0, judge).NewMeasurer();
            Assert.IsType<TableMeasurer>(measurer);
            Compare(new RandomSpaces.Case(space, direction, offsets, judge.Player), judge, measurer);
        }
    }

    private static bool IsByTable(CellSpace space, Layout layout) =>
        new CellVariant(
            space with
            {
                Layouts = [layout],
            },
            0,
            0,
            new CellJudge(Player.At(2), null)
        ).NewMeasurer() is TableMeasurer;

    private static void Check(int cases, bool tablesOnly)
    {
        var counted = 0;
        RandomSpaces.Any.Sample(
            one =>
            {
                var judge = new CellJudge(one.Player, Music.Value);
                var measurer = new CellVariant(one.Space, 0, 0, judge).NewMeasurer();
                if (measurer is TableMeasurer == tablesOnly)
                {
                    Interlocked.Increment(ref counted);
                    Compare(one, judge, measurer);
                }
            },
            iter: cases,
            print: one => one.ToString()
        );
        Assert.InRange(counted, cases / 10, cases);
    }

    // The repertoire is the same for all: only how the fast measure counts in it is the question here.
    private static readonly Lazy<PieceCollection> Music = new(() =>
        PieceCollection.BuiltIn(Player.At(2), Technique.Alternate).OrThrow()
    );

    private static void Compare(RandomSpaces.Case one, CellJudge judge, CellMeasurer measurer)
    {
        var plays = measurer.Measure(one.Offsets);
        for (var first = 0; first < measurer.Takes.Length; first++)
        {
            var recipe = one.Space.RecipeOf(
                one.Space.Layouts[0],
                one.Direction,
                one.Space.StrokesTold[first],
                one.Offsets
            );
            if (!Measurer.Measure(recipe, one.Player).TryGet(out var full, out _))
            {
                Assert.False(plays);
                return;
            }

            Compare(full, judge, measurer.Takes[first]);
        }
    }

    private static void Compare(Measurement full, CellJudge judge, CellTake take)
    {
        var line = full.Realization.Line;
        Assert.Equal(full.EvenLoad!.Value, take.EvenLoad, Tolerance);
        Assert.Equal(full.Ceiling.Least!.Value, take.LeastCeiling, Tolerance);
        Assert.Equal(full.Fretting.Rolls, take.Rolls);
        Assert.Equal(StayingPower(line, judge.Player), take.StayingPower, Tolerance);
        Assert.Equal(GeneralUse(full, judge.Music!.Moves), take.GeneralUse, Tolerance);
        Assert.Equal(UseInMusic(line, judge.Music!.Solos), take.UseInMusic, Tolerance);
    }

    // v1 and vQ: least ceilings at levels 0 and 4; 40/3 notes a second is where more speed is no more music.
    private static double StayingPower(Line line, Player player)
    {
        var first = Measurer.Measure(line, player.MovedTo(0)).OrThrow().Ceiling.Least!.Value;
        var last = Measurer.Measure(line, player.MovedTo(4)).OrThrow().Ceiling.Least!.Value;
        return first < 1 ? 0 : Math.Clamp(1 - (Math.Log(last / first) / Math.Log(40.0 / 3 / first)), 0, 1);
    }

    private static double GeneralUse(Measurement full, Distribution<MoveClass> known)
    {
        var moves = MoveClass.In(full.Realization).ToList();
        var precision = (double)moves.Count(move => known.CountOf(move) > 0) / moves.Count;
        var passesAMinute = 60 * 0.6 * full.Ceiling.Least!.Value / full.Realization.Notes.Length;
        var recall = Coverage.Of(known, Distribution<MoveClass>.Of(moves), 10 / passesAMinute)!.Value;
        return precision + recall == 0 ? 0 : 2 * precision * recall / (precision + recall);
    }

    private static double UseInMusic(Line line, SoloSet solos)
    {
        var cells = Cells.In(line);
        return cells
            .Classes.Where(cell => solos.Lift(cell) >= 1.5)
            .Sum(cell => cells.ShareOf(cell) * Wilson.Of(solos.Holding(cell), solos.Count).Low);
    }
}
