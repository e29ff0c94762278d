using Passagework.Exercises;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class SharedRunsTests
{
    // Groups of three over eight notes of a scale.
    private const string Threes = "60 62 64 62 64 65 64 65 67 65 67 69 67 69 71 69 71 72";

    // Neighbours by fourths and fifths, far from any scale run.
    private const string Other = "60 65 58 63 70 64 57 66";

    [Theory]
    [InlineData(Threes)]
    [InlineData("67 69 71 69 71 72 71 72 74 72 74 76")]
    [InlineData(Threes + " r r " + Threes)]
    [InlineData(Other + " " + Threes + " " + Other)]
    [InlineData("60*2 62*2 64*2 62*2 64*2 65*2 64*2 65*2 67*2")]
    public void Exercise_is_known_in_any_key_tempo_and_frame(string piece) =>
        Assert.True(Hold(Threes, piece));

    [Theory]
    [InlineData("60 62 64 62 64 65 64")]
    [InlineData(Threes + " " + Other + " " + Other + " " + Other + " " + Other + " " + Other)]
    [InlineData("60 62 64 62*2 64 65 64 65*2 67 65 67 69*2")]
    [InlineData("60 62 64 65 67 69 71 72 71 69 67 65 64 62 60")]
    [InlineData(Other)]
    public void Figures_and_passing_runs_are_not_the_exercise(string piece) =>
        Assert.False(Hold(Threes, piece));

    // 8 of 24 notes are a third, 8 of 25 are not.
    [Fact]
    public void A_third_of_the_notes_decides()
    {
        const string run = "60 61 63 66 60 65 71 60";
        const string filling = "60 60 60 60 60 60 60 60 60 60 60 60 60 60 60 60";

        Assert.True(Hold(run, run + " " + filling));
        Assert.False(Hold(run, run + " " + filling + " 60"));
    }

    [Fact]
    public void Exercise_of_fewer_than_eight_notes_is_never_said_to_be_held() =>
        Assert.False(Hold("60 62 64 65 67 69 71", "60 62 64 65 67 69 71"));

    [Fact]
    public void Rests_between_the_groups_of_the_exercise_hide_nothing()
    {
        const string bursts = "60 62 64 65 67 r r r 62 64 65 67 69 r r r 64 65 67 69 71";

        Assert.True(Hold(bursts, bursts));
    }

    private static bool Hold(string exercise, string piece) =>
        new SharedRuns(Tunes.Of(exercise)).MakeUp(SharedRuns.Of(Tunes.Of(piece)));
}
