using Passagework.Hands;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Tests.Features.Exercises;

public sealed class ExerciseDeskTests : IAsyncLifetime
{
    private Room _room = null!;
    private ExerciseDesk _desk = null!;

    public async ValueTask InitializeAsync()
    {
        _room = await Room.Open();
        _desk = _room.Feature<ExerciseDesk>();
        Assert.Null(await _desk.Open(new ExerciseKey("groups-of-five-up"), Player.At(2)));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    // 0.6 of a beginner's and of an intermediate player's top tempo.
    [Fact]
    public void A_tempo_that_nobody_set_is_that_of_the_player_who_is_looked_at()
    {
        Assert.Equal(45, _desk.Bpm);

        _desk.SetPlayer(Player.At(0));

        Assert.Equal(22, _desk.Bpm);
    }

    [Fact]
    public void A_tempo_that_was_set_stays()
    {
        _desk.SetBpm(70);

        _desk.SetPlayer(Player.At(0));

        Assert.Equal(70, _desk.Bpm);
    }
}
