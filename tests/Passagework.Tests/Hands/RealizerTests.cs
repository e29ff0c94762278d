using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

public class RealizerTests
{
    // Scales and arpeggios as pitches alone: several of their five best fingerings lie on other strings.
    [Fact]
    public void Free_strings_take_the_fingering_with_the_higher_ceiling_of_the_five_best()
    {
        var player = Player.At(2);
        var better = 0;
        foreach (var exercise in Library.All.Where(exercise => exercise.Form is "up"))
        {
            var line = Free(LineBuilder.Build(exercise.Recipe).OrThrow());
            var tried = FingeringPlanner
                .PlanBest(line, player, 5)
                .OrThrow()
                .Select(fingering => Least(line, fingering, player))
                .ToArray();

            var chosen = Realizer.Plan(line, player).OrThrow();

            Assert.Equal(tried.Max(), Least(line, chosen.Fingering, player), 1e-12);
            better += tried.Max() > tried[0] + 1e-9 ? 1 : 0;
        }

        Assert.True(better > 0, "no line in which another fingering than the first is the better one");
    }

    private static Line Free(Line line) =>
        line with
        {
            Recipe = line.Recipe with { Fretting = new FrettingPlan() },
            Notes = [.. line.Notes.Select(note => note with { Place = null, Slur = Slur.None })],
        };

    private static double Least(Line line, Fingering fingering, Player player)
    {
        var strokes = StrokePlanner.Plan(line, fingering, player).OrThrow();
        var ceiling = CeilingFinder.Plain(
            new LineDemands(line, fingering, strokes, player),
            player.Parameters
        );
        return Math.Min(
            ceiling.Fretting ?? double.PositiveInfinity,
            ceiling.Picking ?? double.PositiveInfinity
        );
    }
}
