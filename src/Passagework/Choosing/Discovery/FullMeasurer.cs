using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>Measures cells by planning the whole line: for whatever tables can't do.</summary>
internal sealed class FullMeasurer(CellSpace space, Layout layout, Direction direction, CellJudge judge)
    : CellMeasurer
{
    private readonly double _scaleFingers = ScaleReference
        .For(space.PlainOf(layout), judge.Player)
        .EffectiveFingers;

    public override CellTake[] Takes { get; } = new CellTake[space.StrokesTold.Length];

    public override bool Measure(ReadOnlySpan<int> offsets)
    {
        for (var first = 0; first < Takes.Length; first++)
        {
            var recipe = space.RecipeOf(layout, direction, space.StrokesTold[first], offsets);
            var line = LineBuilder.Build(recipe).OrThrow();
            var planned = Array.ConvertAll(
                judge.Levels,
                player => Realizer.Plan(line, player).TryGet(out var done, out _) ? done : null
            );
            if (Array.Exists(planned, done => done is null))
            {
                return false;
            }

            Takes[first] = Take(planned!);
        }

        return true;
    }

    private CellTake Take(PlannedLine[] planned)
    {
        var ceilings = planned.Zip(judge.Levels, LeastCeiling).ToArray();
        var (own, basis) = (planned[CellJudge.Own], judge.Player.Parameters.Basis);
        var balance = Balance.Of(
            own.Demands.Fretting.Milliseconds(basis),
            own.Demands.Picking.Milliseconds(basis)
        );
        var counts = FrettingCounts.Of(own.Fingering);
        return new CellTake
        {
            EvenLoad = (balance ?? double.NaN) * Math.Min(1, counts.EffectiveFingers / _scaleFingers),
            GeneralUse = GeneralUse(own, ceilings[CellJudge.Own]),
            StayingPower = CellFormulas.StayingPower(ceilings[0], ceilings[^1]),
            UseInMusic = UseInMusic(own.Line),
            LeastCeiling = ceilings[CellJudge.Own],
            Rolls = counts.Rolls,
            Stretch = counts.Stretch,
        };
    }

    private static double LeastCeiling(PlannedLine planned, Player player) =>
        CeilingFinder.Plain(planned.Demands, player.Parameters).Least ?? double.NaN;

    private double GeneralUse(PlannedLine planned, double least)
    {
        var moves = Distribution<MoveClass>.Of(MoveClass.In(planned.Realization));
        var leastCount = Measures.GeneralUse.LeastCount(least, planned.Line.Notes.Length);
        return judge.Music is { } music
            ? Measures.GeneralUse.Of(moves, leastCount, music).Raw ?? double.NaN
            : double.NaN;
    }

    private double UseInMusic(Line line)
    {
        var figures = Cells.In(line);
        return judge.Music is null || figures.IsEmpty
            ? double.NaN
            : figures.Classes.Sum(shape => figures.ShareOf(shape) * judge.TermOf(shape));
    }
}
