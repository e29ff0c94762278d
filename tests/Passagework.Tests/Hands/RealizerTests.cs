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

    [Fact]
    public void A_realization_tells_from_which_string_a_note_is_raked()
    {
        // Every second time that the line falls back two strings.
        Assert.Equal([(6, 5), (18, 4), (30, 3)], Raked(Technique.Rake));
        Assert.Empty(Raked(Technique.Economy));
        Assert.Empty(Raked(Technique.Hybrid));
    }

    [Fact]
    public void Notes_raked_from_different_strings_are_not_the_same()
    {
        var note = Realizer
            .Realize(LineBuilder.Build(Library.All[0].Recipe).OrThrow(), Player.At(2))
            .OrThrow()
            .Notes[0];

        Assert.Equal(note with { RakedFrom = 5 }, note with { RakedFrom = 5 });
        Assert.NotEqual(note with { RakedFrom = 5 }, note with { RakedFrom = 4 });
        Assert.NotEqual(note, note with { RakedFrom = 4 });
    }

    private static IEnumerable<(int Note, int From)> Raked(Technique technique)
    {
        var recipe = Library.Find("groups-of-six-up").OrThrow().Recipe with
        {
            Picking = new PickingPlan { Technique = technique },
        };
        return Realizer
            .Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2))
            .OrThrow()
            .Notes.Where(note => note.RakedFrom is not null)
            .Select(note => (note.Note.Index, note.RakedFrom ?? 0));
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
