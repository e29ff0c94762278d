using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Rhythm;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Demo;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Tests.Features.Demo;

public sealed class DemoTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _room = await Room.Open();
        await _room.Feature<InstallDemo>().AtFirstStart(Stop);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task The_first_start_puts_everything_in_once()
    {
        await _room.Feature<InstallDemo>().AtFirstStart(Stop);

        Assert.Equal((6, 3, 2), await Counts());
        var settings = await _room.Feature<ReadSettings>().Read(Stop);
        Assert.Equal(("Saltmarsh Guitar Room", "Hedda Quill"), (settings.Room, settings.Teacher));
    }

    [Fact]
    public async Task Taken_out_it_stays_out_and_leaves_what_is_the_teachers()
    {
        var own = Kept(
            await _room.Feature<ChangeExercise>().Begin(DemoContent.Read("three-and-a-rest"), stop: Stop)
        );
        var changed = await Changed("Fives at fret nine");
        await _room.Feature<ChangeSettings>().Change(now => now with { Teacher = "Somebody" }, Stop);

        await _room.Feature<RemoveDemo>().Remove(Stop);
        await _room.Feature<InstallDemo>().AtFirstStart(Stop);

        await using var db = await _room.Feature<Store>().Open(Stop);
        Assert.Equal(
            new[] { own.Key.Text, changed.Key.Text }.Order(StringComparer.Ordinal),
            (await db.Exercises.Select(row => row.Id).ToListAsync(Stop))
                .Select(id => id.ToString("n"))
                .Order(StringComparer.Ordinal)
        );
        Assert.False(await db.Exercises.AnyAsync(row => row.IsDemo, Stop));
        Assert.Equal(0, await db.Pieces.CountAsync(Stop));
        Assert.False(await _room.Feature<RemoveDemo>().IsThere(Stop));
        var settings = await _room.Feature<ReadSettings>().Read(Stop);
        Assert.Equal((new StudioSettings().Room, "Somebody"), (settings.Room, settings.Teacher));
    }

    [Fact]
    public async Task Put_in_again_it_is_whole_and_not_doubled()
    {
        await _room.Feature<InstallDemo>().Install(Stop);

        Assert.Equal((6, 3, 2), await Counts());
    }

    [Fact]
    public async Task One_that_was_thrown_away_goes_with_the_demo()
    {
        await using (var db = await _room.Feature<Store>().Open(Stop))
        {
            var id = (await db.Exercises.FirstAsync(Stop)).Id;
            await _room.Feature<ThrowAwayExercise>().Remove(id, Stop);
        }

        await _room.Feature<RemoveDemo>().Remove(Stop);

        Assert.Equal((0, 0, 0), await Counts());
    }

    // Bram is a beginner, Isolde intermediate, Kofi advanced.
    [Theory]
    [InlineData("two-gulls", 0)]
    [InlineData("low-water", 2)]
    [InlineData("kiln-lane", 3)]
    public void The_pieces_are_long_enough_and_in_reach_of_those_they_are_for(string name, int level)
    {
        var line = LineBuilder.Build(DemoContent.Read(name)).OrThrow();
        var measured = Measurer.Measure(line, Player.At(level)).OrThrow();

        Assert.InRange(BarBeat.Of(line.Notes[^1].Onset, line.Recipe.Rhythm.Meter).Bar, 16, 24);
        Assert.True(measured.Bpm >= line.Recipe.Rhythm.TempoBpm, $"{measured.Bpm} beats a minute");
        Assert.All(line.Notes, note => Assert.NotNull(note.Place));
    }

    [Fact]
    public void Its_exercises_can_be_played_and_say_what_they_are_for()
    {
        foreach (var exercise in DemoContent.Exercises)
        {
            var recipe = DemoContent.Read(exercise.Name);
            Assert.True(
                Measurer.Measure(recipe, Player.At(2)).TryGet(out _, out var fault),
                fault?.ToString()
            );
            Assert.False(
                string.IsNullOrWhiteSpace(recipe.Title) || string.IsNullOrWhiteSpace(recipe.Purpose)
            );
        }
    }

    // By equal temperament (ISO 16 and the rule of the twelfth root), on a scale length of 648 mm.
    [Fact]
    public void The_reach_at_fret_nine_is_sixteen_millimetres_less()
    {
        static double Fret(int number) => 648 * Math.Pow(2, -number / 12.0);
        var less = Fret(5) - Fret(8) - (Fret(9) - Fret(12));

        Assert.Equal(16, Math.Round(less));
        Assert.Contains(
            DemoContent.Exercises,
            one => one.Notes.Contains("16 mm less", StringComparison.Ordinal)
        );
    }

    // What its remark says: the run in bar 12 of the piece is made of its groups.
    [Fact]
    public void The_falling_fours_stand_in_the_run_of_low_water()
    {
        var fours = LineBuilder.Build(DemoContent.Read("falling-fours-in-e-minor")).OrThrow();
        var piece = LineBuilder.Build(DemoContent.Read("low-water")).OrThrow();

        Assert.Equal([12L, 12L, 12L], Occurrences.Of(fours, piece).Select(found => found.At.Bar));
    }

    private async Task<(int Exercises, int Pieces, int Decisions)> Counts()
    {
        await using var db = await _room.Feature<Store>().Open(Stop);
        return (
            await db.Exercises.CountAsync(Stop),
            await db.Pieces.CountAsync(Stop),
            await db.Decisions.CountAsync(Stop)
        );
    }

    private async Task<OpenedExercise> Changed(string title)
    {
        await using var db = await _room.Feature<Store>().Open(Stop);
        var id = (await db.Exercises.SingleAsync(row => row.Title == title, Stop)).Id;
        var opened = (await _room.Feature<OpenExercise>().Open(ExerciseKey.Of(id), Stop)).OrThrow();
        var recipe = opened.Recipe with { Movement = opened.Recipe.Movement with { Step = 2 } };
        return Kept(
            await _room.Feature<ChangeExercise>().Change(opened, recipe, "step from one to two", Stop)
        );
    }

    private static OpenedExercise Kept(ChangeAnswer answer) =>
        Assert.IsType<ChangeAnswer.Kept>(answer).Exercise;
}
